/** Bars and sheets by the names that a shop buys them under, with their sizes and weights. */
export { type Section, type Sheet } from './types.ts';
export { parseSection, type ExtraSections } from './parse-section.ts';
export { parseSheet } from './parse-sheet.ts';
export { boltHole } from './bolt-hole.ts';
export { parseFlatBar, type FlatBar } from './flat-bar.ts';
export { roundSection, rectangularSection } from './make-section.ts';
export { sameSection } from './same-section.ts';
export { tidyName } from './tidy-name.ts';
export { STEEL_DENSITY } from './density.ts';
export { PIPE_SCHEDULE_40 } from './tables/pipe-schedule-40.ts';
export { SHEET_GAUGE } from './tables/sheet-gauge.ts';
