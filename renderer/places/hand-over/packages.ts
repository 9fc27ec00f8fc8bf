/** The package that is being made or was made last, whatever place a person looks at meanwhile. */
import { slug } from '../../../core/package/slug.ts';
import { type PackageKind } from '../../../core/package/index.ts';
import { type JsonObject } from '../../../core/brief/json/types.ts';
import { type Desk, type HandedFile, type PackageTarget } from '../../../electron/bridge/desk.ts';
import { present } from '../../project/history.ts';
import { valueAt } from '../../project/json-path.ts';
import { textOf } from '../../project/project-text.ts';
import { type Session, type SessionStore } from '../../project/session.ts';
import { createStore, type Store } from '../../project/store.ts';
import { type PackageAsk, type PackageTold, type ShownFault, type Units } from '../../worker/protocol.ts';

export type PackageState =
  | { readonly kind: 'none' }
  /** `path`: the file that was made last; empty: none yet. */
  | { readonly kind: 'making'; readonly name: string; readonly path: string; readonly done: number; readonly total: number }
  /** All is made, and the machine puts it in its place. */
  | { readonly kind: 'writing'; readonly name: string }
  | { readonly kind: 'written'; readonly target: PackageTarget; readonly files: readonly HandedFile[]; readonly of: JsonObject; readonly newMarks: boolean }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'faults'; readonly faults: readonly ShownFault[] }
  | { readonly kind: 'refused'; readonly message: string };

export interface PackageOrder {
  /** null: every kind. */
  readonly only: readonly PackageKind[] | null;
  /** null: the project's own. */
  readonly units: Units | null;
  /** The project of an earlier issue, to cloud the drawings against; null or left out: none. */
  readonly since?: string | null;
}

export interface Packages {
  readonly state: Store<PackageState>;
  /** Lets a person choose the place, makes the package and writes it. Does nothing while one is being made. */
  write(order: PackageOrder): Promise<void>;
  /** Ends the making: nothing is written. Once it is being written it can't be ended. */
  cancel(): void;
}

/** What makes a package away from the page. */
export interface PackageMaker {
  start(ask: PackageAsk, told: (what: PackageTold) => void): void;
  end(): void;
}

interface Making {
  readonly of: JsonObject;
  readonly opened: number;
  readonly target: PackageTarget;
  readonly maker: PackageMaker;
  readonly files: HandedFile[];
}

export function createPackages(desk: Desk, session: SessionStore, newMaker: () => PackageMaker): Packages {
  const state = createStore<PackageState>({ kind: 'none' });
  let making: Making | null = null;
  let choosing = false;
  let opened = 0;

  const end = (next: PackageState): void => {
    making?.maker.end();
    making = null;
    state.set(next);
  };
  const put = async (work: Making, kinds: readonly PackageKind[], marks: Readonly<Record<string, string>>): Promise<void> => {
    state.set({ kind: 'writing', name: work.target.name });
    const reply = await desk.writePackage(work.target.folder, work.files, kinds);
    if (making !== work) return;
    if (!reply.ok) {
      end({ kind: 'refused', message: reply.message });
      return;
    }
    const before = session.get();
    session.issueMarks(marks);
    const now = session.get();
    const newMarks = before !== null && now !== null && present(before.history) !== present(now.history);
    end({ kind: 'written', target: work.target, files: work.files, of: newMarks && present(before.history) === work.of ? present(now.history) : work.of, newMarks });
  };
  const hear = (work: Making, told: PackageTold): void => {
    if (making !== work) return;
    switch (told.kind) {
      case 'made':
        work.files.push({ path: told.path, bytes: told.bytes });
        state.set({ kind: 'making', name: work.target.name, path: told.path, done: told.done, total: told.total });
        return;
      case 'ended':
        work.maker.end();
        void put(work, told.kinds, told.marks);
        return;
      case 'faults': end({ kind: 'faults', faults: told.faults }); return;
      case 'broken':
        end({ kind: 'none' });
        throw new Error(told.message);
    }
  };
  session.subscribe(() => {
    const now = session.get()?.opened ?? 0;
    if (now === opened) return;
    opened = now;
    end({ kind: 'none' });
  });

  return {
    state,
    write: async ({ only, units, since = null }) => {
      const open = session.get();
      if (open === null || making !== null || choosing) return;
      session.settle();
      const of = present(open.history);
      choosing = true;
      const chosen = await desk.choosePackage(packageName(open)).finally(() => { choosing = false; });
      if (!chosen.ok) state.set({ kind: 'refused', message: chosen.message });
      if (!chosen.ok || chosen.value === null || session.get()?.opened !== open.opened) return;
      const work: Making = { of, opened: open.opened, target: chosen.value, maker: newMaker(), files: [] };
      making = work;
      state.set({ kind: 'making', name: work.target.name, path: '', done: 0, total: 0 });
      work.maker.start({ kind: 'package', text: textOf(of), only, units, ...(since === null ? {} : { since }) }, (told) => { hear(work, told); });
    },
    cancel: () => { if (state.get().kind === 'making') end({ kind: 'stopped' }); },
  };
}

/** What the package's folder may be called: the project and its revision. */
function packageName(open: Session): string {
  const project = present(open.history);
  const text = (path: string): string => {
    const value = valueAt(project, path);
    return typeof value === 'string' ? value : '';
  };
  const letter = text('revision.letter');
  return letter === '' ? slug(text('title')) : `${slug(text('title'))}-${slug(letter)}`;
}
