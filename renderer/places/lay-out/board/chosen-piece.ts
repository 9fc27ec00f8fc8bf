import { type PlanPoint } from '../../../../core/base/points.ts';
import { type DeskWindow } from '../../../app/desk-window.ts';
import { type PieceTitle } from '../../../worker/protocol.ts';
import { type BoardState } from './board-state.ts';
import { pieceAt } from './nearest.ts';
import { PX } from './view.ts';

/** How far from a piece it may be pressed, pixels. */
const NEAR = 12;
/** When a hand has rested for so long the pieces are asked for, milliseconds. */
const REST = 120;

export interface ChosenPiece {
  /** Keys of the pieces with the chosen mark; the same set while nothing changes. */
  readonly keys: () => ReadonlySet<string>;
  /** The mark of a piece by its key, as far as it is known. */
  readonly markOf: (key: string) => string | null;
  /** Chooses the piece that lies at a place; none: what was chosen is let go. */
  choose(at: PlanPoint): void;
  end(): void;
}

/** Which pieces bear the chosen mark. The worker is asked for the pieces when the steel has come to rest. */
export function chosenPiece(desk: DeskWindow, { view, pieces: shown }: BoardState, changed: () => void): ChosenPiece {
  const { selection, worked, work } = desk;
  let pieces = byKey(shown.get());
  let keys: ReadonlySet<string> = new Set();
  let mark: string | null = null;
  let waiting: ReturnType<typeof setTimeout> | null = null;
  let seen: object | null = null;
  let ended = false;

  const follow = (): void => {
    mark = selection.get().mark;
    const next = new Set([...pieces.values()].filter((piece) => piece.mark === mark).map(({ key }) => key));
    if (next.size === keys.size && [...next].every((key) => keys.has(key))) return;
    keys = next;
    changed();
  };
  const ask = (): void => {
    const { laid } = worked.get();
    if (laid === null || laid.stations === seen) return;
    seen = laid.stations;
    if (waiting !== null) clearTimeout(waiting);
    waiting = setTimeout(() => {
      void work.ask('pieces', null).then((answer) => {
        if (ended) return;
        shown.set(answer);
        pieces = byKey(answer);
        follow();
      });
    }, REST);
  };
  const lets = [selection.subscribe(() => { if (selection.get().mark !== mark) follow(); }), worked.subscribe(ask)];
  ask();
  follow();
  return {
    keys: () => keys,
    markOf: (key) => pieces.get(key)?.mark ?? null,
    choose: (at) => {
      const picture = worked.get().laid?.picture ?? null;
      const now = view.get();
      if (picture === null || now === null) return;
      const { scale } = picture;
      const key = pieceAt(picture, { x: at.x * scale, y: at.y * scale }, (NEAR * scale) / (PX * now.scale));
      const piece = key === null ? undefined : pieces.get(key);
      if (piece === undefined) desk.select({ mark: null, finding: null });
      else desk.select({ mark: piece.mark, run: piece.run, finding: null, field: null });
    },
    end: () => {
      ended = true;
      if (waiting !== null) clearTimeout(waiting);
      for (const let_ of lets) let_();
    },
  };
}

const byKey = (pieces: readonly PieceTitle[]): ReadonlyMap<string, PieceTitle> => new Map(pieces.map((piece) => [piece.key, piece]));
