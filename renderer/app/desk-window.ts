/** Everything that the window is about, made once and handed to its parts. */
import { createContext, useContext } from 'react';
import { type BoardOptions } from '../../core/board/types.ts';
import { type JsonObject } from '../../core/brief/json/types.ts';
import { type Desk } from '../../electron/bridge/desk.ts';
import { createPackages, type Packages } from '../places/hand-over/packages.ts';
import { present } from '../project/history.ts';
import { createLight, type Light } from '../project/light.ts';
import { createProjects, type Projects } from '../project/projects.ts';
import { createSession, projectText, type SessionStore } from '../project/session.ts';
import { createStore, type Store } from '../project/store.ts';
import { type WorkClient } from '../worker/client.ts';
import { type CutPlanner, cutPlanner } from '../worker/cut-planner.ts';
import { createCuts, type Cuts } from '../worker/cuts.ts';
import { createEarlier, type Earlier } from '../worker/earlier.ts';
import { latest } from '../worker/latest.ts';
import { packageMaker } from '../worker/package-maker.ts';
import { type Laid, type LaidAnswer } from '../worker/protocol.ts';

/** The six places, in the order of the work. */
export const PLACES = ['brief', 'lay-out', 'check', 'make', 'stake-out', 'hand-over'] as const;
export type Place = (typeof PLACES)[number];

/** What a person looks at, wherever they go: a stretch of the walk, a piece, a field of the file. */
export interface Selection {
  readonly run: string | null;
  readonly mark: string | null;
  readonly field: string | null;
  /** Index in the list of findings. */
  readonly finding: number | null;
}

export const NOTHING: Selection = { run: null, mark: null, field: null, finding: null };

/** What came of the project. */
export interface Worked {
  /** The last that could be laid out; null: none yet. */
  readonly laid: Laid | null;
  readonly answer: LaidAnswer | null;
  /** The state of the project that `answer` is about. */
  readonly project: JsonObject | null;
  /** The state that `laid` is about: an earlier one where the present one has faults. */
  readonly laidProject: JsonObject | null;
}

export interface DeskWindow {
  readonly desk: Desk;
  readonly session: SessionStore;
  readonly projects: Projects;
  readonly packages: Packages;
  readonly light: Store<Light>;
  readonly work: WorkClient;
  readonly cuts: Cuts;
  readonly earlier: Earlier;
  readonly worked: Store<Worked>;
  readonly place: Store<Place>;
  readonly selection: Store<Selection>;
  /** How the live plan is looked at; null: it is not in sight. */
  readonly board: Store<BoardOptions | null>;
  /** What a person is told in passing; null: nothing. */
  readonly notice: Store<string | null>;
  select(part: Partial<Selection>): void;
  /** Goes to a place, to what is looked at there. */
  go(place: Place, part?: Partial<Selection>): void;
}

export function createDeskWindow(desk: Desk, work: WorkClient, newPlanner: () => CutPlanner = cutPlanner): DeskWindow {
  const session = createSession();
  const worked = createStore<Worked>({ laid: null, answer: null, project: null, laidProject: null });
  const place = createStore<Place>('brief');
  const selection = createStore<Selection>(NOTHING);
  const board = createStore<BoardOptions | null>(null);
  const notice = createStore<string | null>(null);
  const earlier = createEarlier(work);
  let opened = 0;

  const follow = latest(
    (project: JsonObject) => work.ask('lay', { text: projectText(project), board: board.get() }),
    (project, answer) => {
      const before = worked.get();
      worked.set({ answer, project, laid: answer.laid ?? before.laid, laidProject: answer.laid === null ? before.laidProject : project });
    },
  );
  const again = (): void => {
    const now = session.get();
    if (now === null) return;
    if (now.opened !== opened) {
      opened = now.opened;
      worked.set({ laid: null, answer: null, project: null, laidProject: null });
      selection.set(NOTHING);
      void earlier.drop();
    }
    follow.ask(present(now.history));
  };
  session.subscribe(again);
  board.subscribe(again);

  const projects = createProjects({
    desk, session, work,
    tell: (words) => { notice.set(words); },
    opened: () => { place.set('brief'); },
  });
  const packages = createPackages(desk, session, packageMaker);
  const cuts = createCuts(work, newPlanner);
  const light = createLight();
  const select = (part: Partial<Selection>): void => { selection.set({ ...selection.get(), ...part }); };
  return {
    desk, session, projects, packages, light, work, cuts, earlier, worked, place, selection, board, notice, select,
    go: (where, part) => {
      if (part !== undefined) select(part);
      place.set(where);
    },
  };
}

const Context = createContext<DeskWindow | null>(null);
export const DeskWindowProvider = Context.Provider;

export function useDeskWindow(): DeskWindow {
  const found = useContext(Context);
  if (found === null) throw new Error('no window around this part');
  return found;
}
