/** Unsaved work is kept a moment after each change, so that a crash costs seconds. */
import { type JsonObject } from '../../core/brief/json/types.ts';
import { type Desk, type FileId, type Reply } from '../../electron/bridge/desk.ts';
import { present } from './history.ts';
import { textOf } from './project-text.ts';
import { isUnsaved, type SessionStore } from './session.ts';

/** How long after a change it is kept. */
const WAIT = 2000;

export interface Drafts {
  /** Lets the open project's draft go. */
  drop(): Promise<void>;
  end(): void;
}

/** Keeps drafts of the open project; `tell` is told once where they can't be kept. */
export function keepDrafts(session: SessionStore, desk: Desk, tell: (words: string) => void): Drafts {
  let timer: ReturnType<typeof setTimeout> | null = null;
  /** The project whose draft there may be. */
  let at: { readonly opened: number; readonly file: FileId | null } | null = null;
  let unsaved = false;
  let kept: JsonObject | null = null;
  let told = false;
  // In the order of asking: a draft that is dropped is not written after.
  let queue: Promise<unknown> = Promise.resolve();

  const later = (act: () => Promise<Reply<null>>): Promise<void> => {
    const done = queue.then(act).then((reply) => {
      if (reply.ok || told) return;
      told = true;
      tell(reply.message);
    });
    queue = done.catch(() => undefined);
    return done;
  };
  const cancel = (): void => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
  };
  const dropOf = (file: FileId | null): Promise<void> => later(() => desk.dropDraft(file));
  const keep = (): void => {
    timer = null;
    const open = session.get();
    if (open === null || !isUnsaved(open)) return;
    const project = present(open.history);
    if (project === kept) return;
    kept = project;
    void later(() => desk.keepDraft(open.file, textOf(project)));
  };
  const follow = (): void => {
    const open = session.get();
    if (at !== null && (open?.opened !== at.opened || open.file !== at.file)) {
      cancel();
      if (unsaved) void dropOf(at.file);
      unsaved = false;
      kept = null;
    }
    at = open === null ? null : { opened: open.opened, file: open.file };
    if (open === null) return;
    if (!isUnsaved(open)) {
      cancel();
      if (unsaved) void dropOf(open.file);
      unsaved = false;
      kept = null;
    } else {
      unsaved = true;
      if (present(open.history) !== kept) timer ??= setTimeout(keep, WAIT);
    }
  };
  const unsubscribe = session.subscribe(follow);
  return {
    drop: async () => {
      cancel();
      if (at !== null && unsaved) await dropOf(at.file);
      unsaved = false;
      kept = null;
    },
    end: () => {
      cancel();
      unsubscribe();
    },
  };
}
