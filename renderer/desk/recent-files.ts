import { type RecentProject } from '../../electron/bridge/desk.ts';
import { type Database } from './database.ts';
import { type FileHandle } from './file-access.ts';

/** More than these no person looks through. */
const MOST = 8;

export interface RecentFiles {
  /** The last one first; none where the browser keeps nothing. */
  list(): Promise<readonly RecentProject[]>;
  /** null: it is no longer known. */
  handleOf(id: string): Promise<FileHandle | null>;
  /** Notes that a file was opened or saved just now. */
  note(handle: FileHandle): Promise<void>;
}

export function recentFiles(database: Database): RecentFiles {
  const kept = async (): Promise<Awaited<ReturnType<typeof database.all<'files'>>>> => {
    try {
      return [...(await database.all('files'))].sort((a, b) => b.at - a.at);
    } catch {
      // Without storage there is nothing that was open lately.
      return [];
    }
  };
  return {
    list: async () => (await kept()).map(({ id, name }) => ({ id, name, folder: '' })),
    handleOf: async (id) => (await kept()).find((file) => file.id === id)?.handle ?? null,
    note: async (handle) => {
      const files = await kept();
      let known: string | null = null;
      for (const file of files) if (await file.handle.isSameEntry(handle)) known = file.id;
      try {
        await database.put('files', { id: known ?? crypto.randomUUID(), name: handle.name, handle, at: Date.now() });
        for (const old of files.filter((file) => file.id !== known).slice(MOST - 1)) await database.remove('files', old.id);
      } catch {
        // A list of files is a comfort: opening and saving go on without it.
      }
    },
  };
}
