/** The browser's own storage, as promises. */
import { type FileHandle } from './file-access.ts';

export interface KeptFile {
  readonly id: string;
  readonly name: string;
  readonly handle: FileHandle;
  /** Milliseconds of the clock when it was last opened or saved. */
  readonly at: number;
}

export interface KeptDraft {
  readonly id: string;
  /** The window that keeps it. */
  readonly window: string;
  readonly name: string;
  /** null: no file, or one that the browser gave no lasting hold of. */
  readonly handle: FileHandle | null;
  readonly text: string;
  readonly at: number;
}

interface Kept {
  readonly files: KeptFile;
  readonly drafts: KeptDraft;
}

export interface Database {
  all<S extends keyof Kept>(store: S): Promise<readonly Kept[S][]>;
  get<S extends keyof Kept>(store: S, id: string): Promise<Kept[S] | undefined>;
  put<S extends keyof Kept>(store: S, value: Kept[S]): Promise<void>;
  remove(store: keyof Kept, id: string): Promise<void>;
}

const NAME = 'penwright';
const VERSION = 1;

/** Opens the storage when it is first asked for. Every promise is broken where the browser keeps nothing. */
export function openDatabase(): Database {
  let opened: Promise<IDBDatabase> | null = null;
  const database = (): Promise<IDBDatabase> => {
    opened ??= new Promise((done, failed) => {
      const request = indexedDB.open(NAME, VERSION);
      request.onupgradeneeded = () => {
        request.result.createObjectStore('files', { keyPath: 'id' });
        request.result.createObjectStore('drafts', { keyPath: 'id' });
      };
      request.onsuccess = () => { done(request.result); };
      request.onerror = () => { failed(request.error ?? new Error('no storage')); };
    });
    return opened;
  };
  const run = async <T>(store: keyof Kept, mode: IDBTransactionMode, act: (store: IDBObjectStore) => IDBRequest<T>): Promise<T> => {
    const transaction = (await database()).transaction(store, mode, { durability: 'strict' });
    const request = act(transaction.objectStore(store));
    await new Promise<void>((done, failed) => {
      transaction.oncomplete = () => { done(); };
      transaction.onabort = () => { failed(transaction.error ?? new Error('storage ended the work')); };
    });
    return request.result;
  };
  return {
    all: (store) => run(store, 'readonly', (of) => of.getAll()),
    get: (store, id) => run(store, 'readonly', (of) => of.get(id)),
    put: async (store, value) => { await run(store, 'readwrite', (of) => of.put(value)); },
    remove: async (store, id) => { await run(store, 'readwrite', (of) => of.delete(id)); },
  };
}
