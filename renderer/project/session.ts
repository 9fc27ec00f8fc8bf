/** The project that is open: its states, its file, and whether it is saved. */
import { type Json, type JsonObject } from '../../core/brief/json/types.ts';
import { type FileId } from '../../electron/bridge/desk.ts';
import { alleyAsSet } from './alley-as-set.ts';
import { advance, beginHistory, giveUp, type History, present, redo, settle, undo } from './history.ts';
import { withValue } from './json-path.ts';
import { type Marks, withMarksThroughout } from './marks.ts';
import { textOf } from './project-text.ts';
import { createStore, type Store } from './store.ts';

export interface Session {
  readonly history: History;
  /** null: never saved. */
  readonly file: FileId | null;
  /** The file's name, or what one would be called. */
  readonly name: string;
  /** The state that can be had again without saving: what the file holds, or the example that was begun with. null: none. */
  readonly saved: JsonObject | null;
  /** Grows with every project that is opened, so that what belongs to the one before it is let go. */
  readonly opened: number;
}

export interface Change {
  readonly label: string;
  readonly gesture?: string;
}

export interface SessionStore extends Store<Session | null> {
  open(project: JsonObject, file: FileId | null, name: string, saved: JsonObject | null): void;
  /** The next state of the project. */
  change(project: JsonObject, change: Change): void;
  /** A field's next value; undefined leaves it to its default. */
  setField(path: string, value: Json | undefined, change: Change): void;
  /** Ends a gesture. */
  settle(): void;
  /** Takes a gesture that is still going on back. */
  giveUp(gesture: string): void;
  undo(): void;
  redo(): void;
  /** `before`, which may have been changed since, stands in this file now as `written`, with the marks that it was given. */
  markSaved(before: JsonObject, written: JsonObject, marks: Marks, file: FileId, name: string): void;
  /** The file holds this state: somebody else has written it. */
  fileHolds(project: JsonObject): void;
  /** Marks that were handed over stay with their pieces, whatever is undone. */
  issueMarks(marks: Marks): void;
}

export function createSession(): SessionStore {
  const store = createStore<Session | null>(null);
  let opened = 0;
  const update = (next: (session: Session) => Session): void => {
    const session = store.get();
    if (session !== null) store.set(next(session));
  };
  const move = (next: (history: History) => History): void => {
    update((session) => {
      const history = next(session.history);
      return history === session.history ? session : { ...session, history };
    });
  };
  const change = (project: JsonObject, { label, gesture }: Change): void => {
    move((history) => advance(history, { project, label, gesture: gesture ?? null }));
  };
  return {
    ...store,
    open: (project, file, name, saved) => {
      opened += 1;
      store.set({ history: beginHistory(project), file, name, saved, opened });
    },
    change,
    setField: (path, value, how) => {
      const session = store.get();
      if (session === null) return;
      const project = present(session.history);
      change(withValue(path.startsWith('alley.runs[') && value !== undefined ? alleyAsSet(project) : project, path, value), how);
    },
    settle: () => { move(settle); },
    giveUp: (gesture) => { move((history) => giveUp(history, gesture)); },
    undo: () => { move(undo); },
    redo: () => { move(redo); },
    markSaved: (before, written, marks, file, name) => {
      update((session) => {
        const steps = session.history.steps.map((step) => (step.project === before ? { ...step, project: written } : step));
        return { ...session, history: withMarksThroughout({ ...session.history, steps }, marks), saved: written, file, name };
      });
    },
    fileHolds: (project) => { update((session) => ({ ...session, saved: project })); },
    issueMarks: (marks) => { move((history) => withMarksThroughout(history, marks)); },
  };
}

/** Whether the project holds work that its file does not. */
export const isUnsaved = (session: Session): boolean => session.saved !== present(session.history);

/** A project as its file holds it. */
export const projectText = textOf;
