/** How the sheet is moved by a word or a key. */
import { type BoardPicture } from '../../../../core/board/types.ts';
import { type Store } from '../../../project/store.ts';
import { steelBox } from './steel-box.ts';
import { fitView, panBy, type Size, type View, zoomAbout } from './view.ts';

/** Clear edge round the whole plan, in pixels: room for what is written beside the steel. */
const CLEAR = 76;
export const CLOSER = 1.25;

export function fitBoard(view: Store<View | null>, picture: BoardPicture | null, size: Size): void {
  const box = picture === null ? null : steelBox(picture);
  if (box !== null) view.set(fitView(box, size, CLEAR));
}

export function zoomBoard(view: Store<View | null>, size: Size, factor: number): void {
  const now = view.get();
  if (now !== null) view.set(zoomAbout(now, size, { x: size.width / 2, y: size.height / 2 }, factor));
}

export function panBoard(view: Store<View | null>, dx: number, dy: number): void {
  const now = view.get();
  if (now !== null) view.set(panBy(now, dx, dy));
}
