/** How the sheet is moved by a word or a key. */
import { type BoardPicture } from '../../../../core/board/types.ts';
import { type Store } from '../../../project/store.ts';
import { type BoardState } from './board-state.ts';
import { steelBox } from './steel-box.ts';
import { fitView, panBy, PX, type Size, toScreen, type View, zoomAbout } from './view.ts';

/** Least clear edge round the whole plan, pixels. */
const CLEAR = 30;
/** Of the sheet, at most so much for the edges of a side. */
const MOST = 0.22;
export const CLOSER = 1.25;

/** The whole plan on the sheet, and round it what is written there now: letters keep their size at any scale. */
function fitBoard(view: Store<View | null>, picture: BoardPicture | null, size: Size): void {
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

/** How often the plan is fitted again to what is written at the scale that the last time gave. */
const AGAIN = 4;

/** The whole plan on the sheet, and again for what is written round it at the scale that this gives, once that is drawn. */
export function fitWhole(state: BoardState, picture: BoardPicture | null): void {
  fitBoard(state.view, picture, state.size());
  const scale = state.view.get()?.scale;
  state.fitting = scale === undefined ? null : { scale, left: AGAIN };
}

/** Goes on with a fit when the picture of its scale has come: once in any case, then until every word is on the sheet. Ends where a hand was quicker. */
export function fitFurther(state: BoardState, picture: BoardPicture | null): void {
  const { fitting } = state;
  const view = state.view.get();
  if (fitting === null || view === null || picture?.scale !== fitting.scale) return;
  state.fitting = null;
  // A sheet that moved under a hand that drags would take the handle out of it.
  if (state.dragged.get() !== null || view.scale !== fitting.scale || (fitting.left < AGAIN && allOnSheet(view, state.size(), picture))) return;
  fitBoard(state.view, picture, state.size());
  const scale = state.view.get()?.scale ?? fitting.scale;
  if (scale !== fitting.scale && fitting.left > 1) state.fitting = { scale, left: fitting.left - 1 };
}

/** Whether all that a picture of this view's scale shows lies on the sheet. */
function allOnSheet(view: View, size: Size, { box, scale }: BoardPicture): boolean {
  const low = toScreen(view, size, { x: box.x / scale, y: box.y / scale });
  const high = toScreen(view, size, { x: (box.x + box.width) / scale, y: (box.y + box.height) / scale });
  return low.x >= 0 && high.y >= 0 && high.x <= size.width && low.y <= size.height;
}

export function zoomBoard(view: Store<View | null>, size: Size, factor: number): void {
  const now = view.get();
  if (now !== null) view.set(zoomAbout(now, size, { x: size.width / 2, y: size.height / 2 }, factor));
}

export function panBoard(view: Store<View | null>, dx: number, dy: number): void {
  const now = view.get();
  if (now !== null) view.set(panBy(now, dx, dy));
}
