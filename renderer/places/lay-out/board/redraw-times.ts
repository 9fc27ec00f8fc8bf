import { type DeskWindow } from '../../../app/desk-window.ts';

/** Name of the measures in the browser's own timeline: from a change of the project to its picture on the board. */
export const REDRAW = 'board.redraw';
/** So many are kept. */
const KEPT = 500;

export interface RedrawTimes {
  /** The board shows what was worked out last. */
  drawn(): void;
  end(): void;
}

/** Keeps in the browser's timeline how long each redraw took. A change overtaken by a later one counts with the redraw that shows it. */
export function redrawTimes({ session, worked }: DeskWindow): RedrawTimes {
  let since: number | null = null;
  let shown: object | null = worked.get().project;
  let count = 0;
  const end = session.subscribe(() => { since ??= performance.now(); });
  return {
    drawn: () => {
      const { project } = worked.get();
      if (project === shown) return;
      shown = project;
      if (since !== null) {
        count += 1;
        if (count % KEPT === 0) performance.clearMeasures(REDRAW);
        performance.measure(REDRAW, { start: since, end: performance.now() });
      }
      const open = session.get();
      const present = open?.history.steps[open.history.at]?.project;
      since = present === project ? null : performance.now();
    },
    end,
  };
}
