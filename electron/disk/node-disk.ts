import { chmod, lstat, mkdir, open, readdir, readFile, realpath, rename, rmdir, stat, unlink } from 'node:fs/promises';
import { type Disk, type Entry, type EntryKind, errorCode } from './disk.ts';

interface Kinds {
  isFile(): boolean;
  isDirectory(): boolean;
  isSymbolicLink(): boolean;
}

const kindFrom = (found: Kinds): EntryKind =>
  found.isSymbolicLink() ? 'link' : found.isDirectory() ? 'folder' : found.isFile() ? 'file' : 'other';

/** Systems without a flush for folders refuse it with one of these; their renames are kept by the file system's own journal. */
const NO_FOLDER_FLUSH = new Set(['EISDIR', 'EPERM', 'EACCES', 'EINVAL', 'ENOTSUP', 'EBADF']);

/** The disk of this machine. */
export const nodeDisk: Disk = {
  kindOf: async (path) => {
    try {
      return kindFrom(await lstat(path));
    } catch (error) {
      // ENOTDIR: a file stands where the path needs a folder, so nothing stands at the path itself.
      if (errorCode(error) === 'ENOENT' || errorCode(error) === 'ENOTDIR') return null;
      throw error;
    }
  },
  realPath: (path) => realpath(path),
  list: async (path) => {
    const found: Entry[] = (await readdir(path, { withFileTypes: true })).map((entry) => ({ name: entry.name, kind: kindFrom(entry) }));
    return found.sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  },
  read: (path) => readFile(path),
  makeFolder: async (path) => {
    await mkdir(path);
  },
  writeNew: async (path, bytes, mode) => {
    const file = await open(path, 'wx', mode);
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
  },
  rename: (from, to) => rename(from, to),
  removeFile: (path) => unlink(path),
  removeFolder: (path) => rmdir(path),
  flushFolder: async (path) => {
    try {
      const folder = await open(path, 'r');
      try {
        await folder.sync();
      } finally {
        await folder.close();
      }
    } catch (error) {
      if (!NO_FOLDER_FLUSH.has(errorCode(error) ?? '')) throw error;
    }
  },
  modeOf: async (path) => (await stat(path)).mode & 0o7777,
  setMode: (path, mode) => chmod(path, mode),
};
