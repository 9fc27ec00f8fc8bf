/** The live plan: what it shows, what a hand may take hold of, what may be measured on it. */
export { boardPicture } from './picture.ts';
export { handles } from './handles/index.ts';
export { figureAt } from './figure-at.ts';
export { draggedValue } from './dragged-value.ts';
export { sightLines, type SightLine } from './sight-lines.ts';
export { snap, type OnFace, type Snap } from './snap.ts';
export { measureBetween, type Measure } from './measure-between.ts';
export { pieceNear } from './piece-near.ts';
export type * from './types.ts';
