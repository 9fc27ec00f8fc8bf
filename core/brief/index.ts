/** The brief: a project file read through one door, checked whole, its defaults filled in. */
export { readBrief, type ReadBrief } from './read-brief.ts';
export { printFault } from './print-fault.ts';
export { railRows, isPartSolid, type RowSettings } from './rail-rows.ts';
export { RANGES, type Range } from './ranges.ts';
export { DEFAULTS } from './defaults.ts';
export { bringForward, CURRENT_VERSION } from './versions/bring-forward.ts';
export * from './types.ts';
