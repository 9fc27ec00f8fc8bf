import { randomBytes } from 'node:crypto';
import { basename } from 'node:path';
import { type FileId } from '../../bridge/desk.ts';
import { type ProjectFile, sha256 } from '../../disk/index.ts';

/** A file that a person chose, as it was when it was last read or saved here. */
export interface OpenFile {
  readonly id: FileId;
  /** Links followed. */
  readonly path: string;
  readonly name: string;
  readonly byteOrderMark: boolean;
  /** Digest of the bytes that the window knows of. */
  readonly known: string;
  /** Digest of the bytes that a person was last shown as somebody else's; null: none. */
  readonly shown: string | null;
}

/** The files that have an id. */
export interface OpenFiles {
  /** Gives a file its id, the one that it had where it had one, and notes what it holds. */
  note(path: string, byteOrderMark: boolean, known: string): OpenFile;
  update(id: FileId, part: Partial<Pick<OpenFile, 'known' | 'shown'>>): void;
  /** Throws for an id that was never given. */
  get(id: FileId): OpenFile;
  all(): readonly OpenFile[];
}

export function createOpenFiles(): OpenFiles {
  const byId = new Map<FileId, OpenFile>();
  return {
    note: (path, byteOrderMark, known) => {
      const before = [...byId.values()].find((file) => file.path === path);
      const id = before?.id ?? (`file-${randomBytes(8).toString('hex')}` as FileId);
      const file: OpenFile = { id, path, name: basename(path), byteOrderMark, known, shown: null };
      byId.set(id, file);
      return file;
    },
    update: (id, part) => { byId.set(id, { ...find(byId, id), ...part }); },
    get: (id) => find(byId, id),
    all: () => [...byId.values()],
  };
}

function find(files: ReadonlyMap<FileId, OpenFile>, id: FileId): OpenFile {
  const file = files.get(id);
  if (file === undefined) throw new Error(`no open file ${id}`);
  return file;
}

/** Notes a file as it was read. */
export const noteRead = (files: OpenFiles, project: ProjectFile): OpenFile => files.note(project.path, project.byteOrderMark, sha256(project.bytes));
