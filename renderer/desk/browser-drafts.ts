/** Drafts in the browser's own storage. A window shows that it is open by a lock, so that its drafts are not offered to another. */
import { say } from '../../core/text/index.ts';
import { type Desk, type FileId, type OpenedProject, type Reply } from '../../electron/bridge/desk.ts';
import { type Database } from './database.ts';
import { type FileHandle } from './file-access.ts';
import { type HeldFile } from './browser-files.ts';

type Drafts = Pick<Desk, 'keepDraft' | 'dropDraft' | 'drafts' | 'takeDraft' | 'throwDraft'>;

interface Around {
  heldFile(file: FileId): HeldFile;
  openHandle(handle: FileHandle): Promise<Reply<OpenedProject>>;
}

const lockName = (window: string): string => `penwright-window-${window}`;

export function browserDrafts(database: Database, files: Around): Drafts {
  const self = crypto.randomUUID();
  // A page that is not served securely has no locks: there every draft is offered.
  const locks = navigator.locks as LockManager | undefined;
  void locks?.request(lockName(self), () => new Promise<void>(() => undefined));
  /** The draft that stands for each file of this window, and for the project without one. */
  const ids = new Map<FileId | null, string>();

  const done = async (act: () => Promise<void>): Promise<Reply<null>> => {
    try {
      await act();
      return { ok: true, value: null };
    } catch (error) {
      return { ok: false, message: say('browser-desk.no-storage', { reason: error instanceof Error ? error.name : String(error) }) };
    }
  };
  return {
    keepDraft: (file, text) => done(async () => {
      const of = file === null ? null : files.heldFile(file);
      const id = ids.get(file) ?? crypto.randomUUID();
      ids.set(file, id);
      await database.put('drafts', { id, window: self, name: of?.name ?? '', handle: of?.handle ?? null, text, at: Date.now() });
    }),
    dropDraft: (file) => done(async () => {
      const id = ids.get(file);
      if (id === undefined) return;
      ids.delete(file);
      await database.remove('drafts', id);
    }),
    drafts: async () => {
      try {
        const open = new Set((await locks?.query())?.held?.map((lock) => lock.name));
        const left = (await database.all('drafts')).filter((draft) => !open.has(lockName(draft.window)));
        return left.sort((a, b) => b.at - a.at).map(({ id, name, text, at }) => ({ id, name, text, kept: printTime(at) }));
      } catch {
        // Without storage none was kept.
        return [];
      }
    },
    takeDraft: async (id) => {
      const draft = await database.get('drafts', id);
      if (draft === undefined) return { ok: false, message: say('browser-desk.draft-gone') };
      const opened = draft.handle === null ? null : await files.openHandle(draft.handle);
      const project = opened?.ok === true ? opened.value : null;
      // It stays where it is and is this window's from now on: at no moment is the work in one place alone.
      ids.set(project?.file ?? null, id);
      await database.put('drafts', { ...draft, window: self });
      return { ok: true, value: { project, text: draft.text } };
    },
    throwDraft: (id) => done(() => database.remove('drafts', id)),
  };
}

/** A moment as a person reads it: `2026-03-02 14:05`, in the time of the place. */
function printTime(at: number): string {
  const when = new Date(at);
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${String(when.getFullYear())}-${two(when.getMonth() + 1)}-${two(when.getDate())} ${two(when.getHours())}:${two(when.getMinutes())}`;
}
