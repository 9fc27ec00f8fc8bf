import { type BoardOptions } from '../../../../core/board/types.ts';
import { type DeskWindow } from '../../../app/desk-window.ts';
import { type BoardState } from './board-state.ts';

/** Scale of the first picture, by which the board is fitted: about 100 ft across a small screen. */
const FIRST_SCALE = 0.008;
/** While the sheet is brought closer it is drawn anew so often, milliseconds. */
const PAUSE = 110;

/** Tells the window how the plan is looked at, so that it is drawn for that: at once for what is shown, with pauses for the scale. */
export function boardAsks({ board }: DeskWindow, { view, shows, dragged }: BoardState): () => void {
  let waiting: ReturnType<typeof setTimeout> | null = null;

  const tell = (): void => {
    if (waiting !== null) clearTimeout(waiting);
    waiting = null;
    const { sizes, marks, sights } = shows.get();
    const next: BoardOptions = { scale: view.get()?.scale ?? FIRST_SCALE, sizes, marks, sights, dragged: dragged.get() };
    const now = board.get();
    if (now === null || keys.some((key) => now[key] !== next[key])) board.set(next);
  };
  const closer = (): void => {
    const scale = view.get()?.scale;
    if (scale === undefined || scale === board.get()?.scale) return;
    waiting ??= setTimeout(tell, PAUSE);
  };
  const lets = [view.subscribe(closer), shows.subscribe(tell), dragged.subscribe(tell)];
  tell();
  return () => {
    for (const let_ of lets) let_();
    if (waiting !== null) clearTimeout(waiting);
    board.set(null);
  };
}

const keys = ['scale', 'sizes', 'marks', 'sights', 'dragged'] as const;
