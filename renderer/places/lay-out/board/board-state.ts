/** What the board keeps while a person is elsewhere in the window: where it is looked at from, and what is shown on it. */
import { type PlanPoint } from '../../../../core/base/points.ts';
import { type DeskWindow } from '../../../app/desk-window.ts';
import { createStore, type Store } from '../../../project/store.ts';
import { type PieceTitle } from '../../../worker/protocol.ts';
import { type Size, type View } from './view.ts';

export interface Shows {
  readonly sizes: boolean;
  readonly marks: boolean;
  readonly sights: boolean;
  /** Places of findings. */
  readonly places: boolean;
}

/** A place that is measured from or to. */
export interface MeasurePoint {
  readonly at: PlanPoint;
  /** What stands there, in words; empty: nothing that has a name. */
  readonly name: string;
}

export interface Measuring {
  readonly from: MeasurePoint | null;
  readonly to: MeasurePoint | null;
}

export interface BoardState {
  /** null: not fitted to the plan yet. */
  readonly view: Store<View | null>;
  /** The plan is being fitted to the sheet: the scale whose picture is awaited, and how often it may be fitted again. null: it is not. */
  fitting: { readonly scale: number; readonly left: number } | null;
  readonly shows: Store<Shows>;
  /** null: nothing is being measured. */
  readonly measuring: Store<Measuring | null>;
  /** Field that a hand moves now. */
  readonly dragged: Store<string | null>;
  /** Handle whose figure is being typed, by its id. */
  readonly typing: Store<string | null>;
  /** Every piece of the design, when it has come to rest. */
  readonly pieces: Store<readonly PieceTitle[]>;
  /** Piece mark that is to be brought into sight. */
  readonly sought: Store<string | null>;
  /** Of the sheet on the screen, pixels; nothing while it is not there. */
  readonly size: () => Size;
  setSize(size: Size): void;
  /** Handle that is to be given the focus, by its id, as soon as it stands on the board. */
  readonly wanted: Store<string | null>;
}

const kept = new WeakMap<DeskWindow, { readonly opened: number; readonly state: BoardState }>();

/** The board's state for the project that is open: a project opened anew is looked at afresh, what is shown stays. */
export function boardState(desk: DeskWindow): BoardState {
  const opened = desk.session.get()?.opened ?? 0;
  const found = kept.get(desk);
  if (found?.opened === opened) return found.state;
  let size: Size = { width: 0, height: 0 };
  const state: BoardState = {
    fitting: null,
    size: () => size,
    setSize: (next) => { size = next; },
    pieces: createStore<readonly PieceTitle[]>([]),
    sought: createStore<string | null>(null),
    view: createStore<View | null>(null),
    shows: found?.state.shows ?? createStore<Shows>({ sizes: true, marks: false, sights: false, places: true }),
    measuring: createStore<Measuring | null>(null),
    dragged: createStore<string | null>(null),
    typing: createStore<string | null>(null),
    wanted: createStore<string | null>(null),
  };
  kept.set(desk, { opened, state });
  return state;
}
