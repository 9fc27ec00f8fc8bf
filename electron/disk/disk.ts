/** The few things that are done to a disk, so that a test can stop the machine after any one of them. */

export type EntryKind = 'file' | 'folder' | 'link' | 'other';

export interface Entry {
  readonly name: string;
  readonly kind: EntryKind;
}

export interface Disk {
  /** What stands at a path, links not followed; null where nothing does. */
  kindOf(path: string): Promise<EntryKind | null>;
  /** The path with every link followed. Rejects where nothing stands there. */
  realPath(path: string): Promise<string>;
  /** What a folder holds, in the order of the names' code units. */
  list(path: string): Promise<readonly Entry[]>;
  read(path: string): Promise<Uint8Array>;
  /** Makes one folder, whose parent must stand. Rejects with EEXIST where something stands there. */
  makeFolder(path: string): Promise<void>;
  /** Writes a new file and flushes it. Rejects with EEXIST where something stands there. */
  writeNew(path: string, bytes: Uint8Array, mode?: number): Promise<void>;
  rename(from: string, to: string): Promise<void>;
  removeFile(path: string): Promise<void>;
  /** Removes an empty folder. Rejects with ENOTEMPTY where it is not empty. */
  removeFolder(path: string): Promise<void>;
  /** Flushes a folder's own list of names. */
  flushFolder(path: string): Promise<void>;
  /** Permission bits of a file or folder. */
  modeOf(path: string): Promise<number>;
  setMode(path: string, mode: number): Promise<void>;
}

/** The operating system's code of an error (`ENOENT`, …), or null. */
export function errorCode(error: unknown): string | null {
  if (typeof error !== 'object' || error === null || !('code' in error)) return null;
  return typeof error.code === 'string' ? error.code : null;
}
