import { basename, dirname, join } from 'node:path';
import { type FileId, type Saved } from '../../bridge/desk.ts';
import { type Disk, GREATEST_BYTES, readProject, Refused, replaceFile, sha256, withReason } from '../../disk/index.ts';
import { withEnding } from './endings.ts';
import { type OpenFile, type OpenFiles } from './open-files.ts';

/**
 * Writes a project into its file, whole or not at all. Where somebody else has changed the file since the window last knew it, nothing
 * is written and what it holds now is returned; `force` writes over what was returned so, and nothing newer.
 * A file that is gone is written anew. Throws `Refused`.
 */
export async function saveProject(disk: Disk, files: OpenFiles, id: FileId, text: string, force: boolean): Promise<Saved> {
  const file = files.get(id);
  const bytes = encoded(file.path, text, file.byteOrderMark);
  const mayGo = new Set([file.known, sha256(bytes), ...(force && file.shown !== null ? [file.shown] : [])]);
  if (await write(disk, file.path, bytes, (now) => now === null || mayGo.has(sha256(now)))) {
    files.update(id, { known: sha256(bytes), shown: null });
    return { kind: 'saved' };
  }
  const now = await readProject(disk, '', file.path);
  files.update(id, { shown: sha256(now.bytes) });
  return { kind: 'changed', text: now.text };
}

/**
 * Writes a project into the file that a person chose, who was asked there whether it may take another's place. Throws `Refused`, also
 * where the ending that was missing leads to a file that they were not asked about.
 */
export async function saveProjectAs(disk: Disk, files: OpenFiles, chosen: string, text: string): Promise<OpenFile> {
  const wanted = withEnding(chosen);
  const path = await withReason(wanted, 'shell.file-unwritten', () => followed(disk, wanted));
  const stands = await withReason(wanted, 'shell.file-unwritten', async () => ((await disk.kindOf(path)) === null ? null : disk.read(path)));
  if (stands !== null && wanted !== chosen) throw new Refused(wanted, 'shell.file-not-asked');
  const bytes = encoded(path, text, false);
  const before = stands === null ? null : sha256(stands);
  if (!(await write(disk, path, bytes, (now) => (now === null ? null : sha256(now)) === before))) throw new Refused(wanted, 'shell.file-raced');
  return files.note(path, false, sha256(bytes));
}

/** A path with its links followed, or that of a file to be made in a folder that stands. */
const followed = async (disk: Disk, path: string): Promise<string> =>
  (await disk.kindOf(path)) === null ? join(await disk.realPath(dirname(path)), basename(path)) : disk.realPath(path);

function encoded(path: string, text: string, byteOrderMark: boolean): Uint8Array {
  const bytes = new TextEncoder().encode(byteOrderMark ? `\ufeff${text}` : text);
  if (bytes.length > GREATEST_BYTES) throw new Refused(path, 'command.project-too-large', { mb: GREATEST_BYTES / 1024 / 1024 });
  return bytes;
}

async function write(disk: Disk, path: string, bytes: Uint8Array, mayReplace: (now: Uint8Array | null) => boolean): Promise<boolean> {
  return withReason(path, 'shell.file-unwritten', async () => {
    const kind = await disk.kindOf(path);
    if (kind !== null && kind !== 'file') throw new Refused(path, 'command.project-not-file');
    // A new file renamed over it would take no notice of the mark.
    if (kind === 'file' && ((await disk.modeOf(path)) & 0o222) === 0) throw new Refused(path, 'shell.file-read-only');
    return replaceFile(disk, path, bytes, mayReplace);
  });
}
