/** Plates: what a table cuts, checked and marked. */
export { platesOf } from './plates-of.ts';
export { plateColumns, plateRows, type PlateRow } from './plate-rows.ts';
export { outlineOf } from './outline-of.ts';
export { moveShape, turnPoint, type Turn } from './move-shape.ts';
export { cutPaths, tableModel, type TableLayer } from './maker-model.ts';
export { refusalOf } from './refusal-of.ts';
export { PLATE_PRACTICE } from './practice.ts';
export type { Plate, PlateRefusal } from './types.ts';
