import { type PlanPoint } from '../../../../core/base/points.ts';
import { type DeskWindow } from '../../../app/desk-window.ts';
import { type Scene } from './scene.ts';
import { PX } from './view.ts';

/** How far from a piece it may be pressed, pixels. */
const NEAR = 14;

export interface ChosenPiece {
  /** Keys of the pieces with the chosen mark; the same set while nothing changes. */
  readonly keys: () => ReadonlySet<string>;
  /** What a press on the board chooses. */
  chooseAt(scene: Scene): (at: PlanPoint) => void;
  end(): void;
}

/** The pieces that bear the chosen mark, asked of the worker when the mark changes or the steel does. */
export function chosenPiece(desk: DeskWindow, changed: () => void): ChosenPiece {
  const { selection, worked, work } = desk;
  let keys: ReadonlySet<string> = new Set();
  let asked: { readonly mark: string | null; readonly laid: object | null } = { mark: null, laid: null };

  const ask = (): void => {
    const { mark } = selection.get();
    const { laid } = worked.get();
    if (mark === asked.mark && (laid === asked.laid || mark === null)) return;
    const now = { mark, laid };
    asked = now;
    if (mark === null || laid === null) {
      if (keys.size > 0) keys = new Set();
      return;
    }
    void work.ask('pieces', null).then((pieces) => {
      if (asked !== now) return;
      const next = new Set(pieces.filter((piece) => piece.mark === mark).map(({ key }) => key));
      if (next.size === keys.size && [...next].every((key) => keys.has(key))) return;
      keys = next;
      changed();
    });
  };
  const lets = [selection.subscribe(ask), worked.subscribe(ask)];
  ask();
  return {
    keys: () => keys,
    chooseAt: ({ state }) => (at) => {
      const scale = state.view.get()?.scale;
      if (scale === undefined) return;
      void work.ask('piece-near', { at, within: NEAR / (scale * PX) }).then((piece) => {
        if (piece === null) desk.select({ mark: null, finding: null });
        else desk.select({ mark: piece.mark, run: piece.run, finding: null, field: null });
      });
    },
    end: () => { for (const let_ of lets) let_(); },
  };
}
