/** Lengths, weights and angles between a person's writing and the core's plain figures. */
export { parseLength } from './parse-length.ts';
export { parseWeight, KG_PER_POUND } from './parse-weight.ts';
export { parseFigure, tidyFigures } from './parse-figure.ts';
export { printLength, printDecimalInches, type LengthForm } from './print-length.ts';
export { printWeight } from './print-weight.ts';
export { printAngle } from './print-angle.ts';
export { printStep, printedParts, roundLength, type LengthUnits } from './round-length.ts';
