/** Projects in a browser: the file itself where the browser lets a page hold it, else a file field and a download. */
import { say } from '../../core/text/index.ts';
import { type Desk, type FileId, type OpenedProject, type Refused, type Reply } from '../../electron/bridge/desk.ts';
import { type Database } from './database.ts';
import { chooseFile } from './choose-file.ts';
import { download } from './download.ts';
import { fileAccess, type FileHandle, isAllowed, isShut } from './file-access.ts';
import { fileBytes, readTextFile, sameBytes } from './read-text.ts';
import { recentFiles } from './recent-files.ts';

/** A file that was chosen: what it held when it was last read or written here. */
export interface HeldFile {
  readonly name: string;
  /** null: the browser keeps no hold of it, and saving it is a download. */
  readonly handle: FileHandle | null;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly byteOrderMark: boolean;
  /** What a person was last shown as somebody else's; null: nothing. */
  readonly shown: Uint8Array | null;
}

type Files = Pick<Desk, 'openProject' | 'recentProjects' | 'openRecent' | 'saveProject' | 'saveProjectAs'> & {
  /** What a file's id stands for. Throws for one that was never given. */
  heldFile(file: FileId): HeldFile;
  /** Reads a file that was held before. */
  openHandle(handle: FileHandle): Promise<Reply<OpenedProject>>;
};

const kinds = (): readonly [{ readonly description: string; readonly accept: Readonly<Record<string, readonly string[]>> }] =>
  [{ description: say('browser-desk.kind'), accept: { 'application/json': ['.penwright.json', '.penwright', '.json'] } }];

export function browserFiles(database: Database): Files {
  const held = new Map<FileId, HeldFile>();
  const recent = recentFiles(database);
  let count = 0;
  const hold = (file: HeldFile): FileId => {
    count += 1;
    const id = `file-${String(count)}` as FileId;
    held.set(id, file);
    return id;
  };
  const heldFile = (file: FileId): HeldFile => {
    const found = held.get(file);
    if (found === undefined) throw new Error(`no such file: ${file}`);
    return found;
  };
  const take = async (file: File, handle: FileHandle | null): Promise<Reply<OpenedProject>> => {
    const read = await readTextFile(file);
    if (!read.ok) return read;
    const id = hold({ name: file.name, handle, bytes: read.bytes, byteOrderMark: read.byteOrderMark, shown: null });
    if (handle !== null) await recent.note(handle);
    return { ok: true, value: { file: id, name: file.name, text: read.text } };
  };
  const openHandle = async (handle: FileHandle): Promise<Reply<OpenedProject>> => {
    try {
      if (!(await isAllowed(handle, 'read'))) return { ok: false, message: say('browser-desk.not-allowed', { name: handle.name }) };
      return await take(await handle.getFile(), handle);
    } catch (error) {
      return whyNot(error, handle.name);
    }
  };
  const write = async (handle: FileHandle, bytes: Uint8Array<ArrayBuffer>): Promise<Refused | null> => {
    try {
      if (!(await isAllowed(handle, 'readwrite'))) return { ok: false, message: say('browser-desk.not-allowed', { name: handle.name }) };
      // The browser writes beside the file and puts it in its place when it is closed.
      const stream = await handle.createWritable();
      await stream.write(bytes);
      await stream.close();
      return null;
    } catch (error) {
      return whyNot(error, handle.name);
    }
  };

  return {
    heldFile,
    openHandle,
    recentProjects: recent.list,
    openProject: async () => {
      const access = fileAccess();
      if (access === null) {
        const file = await chooseFile();
        return file === null ? { ok: true, value: null } : take(file, null);
      }
      try {
        const [handle] = await access.showOpenFilePicker({ types: kinds(), multiple: false });
        return handle === undefined ? { ok: true, value: null } : await openHandle(handle);
      } catch (error) {
        return isShut(error) ? { ok: true, value: null } : whyNot(error, say('browser-desk.kind'));
      }
    },
    openRecent: async (id) => {
      const handle = await recent.handleOf(id);
      return handle === null ? { ok: false, message: say('browser-desk.recent-gone') } : openHandle(handle);
    },
    saveProject: async (file, text, force) => {
      const before = heldFile(file);
      const bytes = fileBytes(text, before.byteOrderMark);
      if (before.handle === null) download(bytes, before.name, 'application/json');
      else {
        const now = await readNow(before.handle);
        if (!now.ok) return now;
        // `force` writes over what a person was shown, and over nothing newer.
        const mayGo = [before.bytes, bytes, ...(force && before.shown !== null ? [before.shown] : [])];
        if (!mayGo.some((known) => sameBytes(now.bytes, known))) {
          held.set(file, { ...before, shown: now.bytes });
          return { ok: true, value: { kind: 'changed', text: now.text } };
        }
        const refused = await write(before.handle, bytes);
        if (refused !== null) return refused;
        await recent.note(before.handle);
      }
      held.set(file, { ...before, bytes, shown: null });
      return { ok: true, value: { kind: 'saved' } };
    },
    saveProjectAs: async (suggestedName, text) => {
      const access = fileAccess();
      const bytes = fileBytes(text, false);
      if (access === null) {
        download(bytes, suggestedName, 'application/json');
        return { ok: true, value: { file: hold({ name: suggestedName, handle: null, bytes, byteOrderMark: false, shown: null }), name: suggestedName } };
      }
      try {
        const handle = await access.showSaveFilePicker({ types: kinds(), suggestedName });
        const refused = await write(handle, bytes);
        if (refused !== null) return refused;
        await recent.note(handle);
        return { ok: true, value: { file: hold({ name: handle.name, handle, bytes, byteOrderMark: false, shown: null }), name: handle.name } };
      } catch (error) {
        return isShut(error) ? { ok: true, value: null } : whyNot(error, suggestedName);
      }
    },
  };
}

/** What a file holds now. A file that is no text is told as changed by whoever made it so: it has no words of a project. */
async function readNow(handle: FileHandle): Promise<{ readonly ok: true; readonly text: string; readonly bytes: Uint8Array } | Refused> {
  try {
    const file = await handle.getFile();
    const read = await readTextFile(file);
    return read.ok ? read : { ok: true, text: '', bytes: new Uint8Array(await file.arrayBuffer()) };
  } catch (error) {
    return whyNot(error, handle.name);
  }
}

function whyNot(error: unknown, name: string): Refused {
  if (!(error instanceof DOMException)) throw error;
  if (error.name === 'NotFoundError') return { ok: false, message: say('browser-desk.gone', { name }) };
  if (error.name === 'NotAllowedError') return { ok: false, message: say('browser-desk.not-allowed', { name }) };
  return { ok: false, message: say('browser-desk.failed', { name, reason: error.name }) };
}
