/** Lists for the shop and the field: pieces, bends, materials, stakeout, and the path for other programs. */
export { pieceColumns, pieceRows, type PieceRow } from './pieces.ts';
export { bendColumns, bendRows, type BendRow } from './bends.ts';
export { concreteRows } from './concrete.ts';
export { holeConcrete, postHoleRows } from './post-hole-concrete.ts';
export { hardwareRows, hardwareSize, type HardwareRow } from './hardware.ts';
export { materialLines } from './material-lines.ts';
export { materialColumns, materialRows, type MaterialLine, type MaterialRow } from './materials.ts';
export { openingColumns, openingRows, type OpeningRow } from './openings.ts';
export { stakeoutColumns, stakeoutRows, type StakeKind, type StakeRow } from './stakeout.ts';
export { stations, type StationRun, type Stations } from './stations.ts';
export { baselineSide, type BaselineSide } from './baseline-side.ts';
export type { Column, ColumnFigure, Units } from './column.ts';
export * from './welds/index.ts';
export * from './set-up/index.ts';
