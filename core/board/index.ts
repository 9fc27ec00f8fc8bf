/** The live plan: what it shows, and what a hand may take hold of. */
export { boardPicture } from './picture.ts';
export { handles } from './handles/index.ts';
export { figureAt } from './figure-at.ts';
export { draggedValue } from './dragged-value.ts';
export { sightLines, type SightLine } from './sight-lines.ts';
export type * from './types.ts';
