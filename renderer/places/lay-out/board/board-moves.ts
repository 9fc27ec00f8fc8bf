/** How the sheet is moved by a word or a key. */
import { type BoardPicture } from '../../../../core/board/types.ts';
import { type Store } from '../../../project/store.ts';
import { steelBox } from './steel-box.ts';
import { fitView, panBy, PX, type Size, type View, zoomAbout } from './view.ts';

/** Least clear edge round the whole plan, pixels. */
const CLEAR = 30;
/** Of the sheet, at most so much for the edges of a side. */
const MOST = 0.22;
export const CLOSER = 1.25;

/** The whole plan on the sheet, and round it what is written there now: letters keep their size at any scale. */
export function fitBoard(view: Store<View | null>, picture: BoardPicture | null, size: Size): void {
  const steel = picture === null ? null : steelBox(picture);
  if (picture === null || steel === null) return;
  const { box, scale } = picture;
  const edge = (beyond: number, most: number): number => Math.min(Math.max(CLEAR, beyond * PX + 10), most * MOST);
  const edges = {
    left: edge(steel.left * scale - box.x, size.width),
    right: edge(box.x + box.width - steel.right * scale, size.width),
    low: edge(steel.low * scale - box.y, size.height),
    high: edge(box.y + box.height - steel.high * scale, size.height),
  };
  view.set(fitView(steel, size, edges));
}

export function zoomBoard(view: Store<View | null>, size: Size, factor: number): void {
  const now = view.get();
  if (now !== null) view.set(zoomAbout(now, size, { x: size.width / 2, y: size.height / 2 }, factor));
}

export function panBoard(view: Store<View | null>, dx: number, dy: number): void {
  const now = view.get();
  if (now !== null) view.set(panBy(now, dx, dy));
}
