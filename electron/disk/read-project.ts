import { resolve } from 'node:path';
import { type Disk } from './disk.ts';
import { Refused } from './refusal.ts';
import { withReason } from './with-reason.ts';

/** A project file as it was read. */
export interface ProjectFile {
  /** Links followed. */
  readonly path: string;
  readonly bytes: Uint8Array;
  /** Without its byte order mark. */
  readonly text: string;
  readonly byteOrderMark: boolean;
}

/** Far over any project a person writes; a file of another kind given by mistake is told before it fills the memory. */
export const GREATEST_BYTES = 16 * 1024 * 1024;

/** Reads a project file as UTF-8, with or without a byte order mark. Throws `Refused`. `shown` is the path as a person gave it. */
export async function readProject(disk: Disk, cwd: string, shown: string): Promise<ProjectFile> {
  return withReason(shown, 'command.project-unreadable', async () => {
    const given = resolve(cwd, shown);
    if ((await disk.kindOf(given)) === null) throw new Refused(shown, 'command.project-missing');
    const path = await disk.realPath(given);
    const kind = await disk.kindOf(path);
    if (kind === 'folder') throw new Refused(shown, 'command.project-folder');
    if (kind !== 'file') throw new Refused(shown, 'command.project-not-file');
    const bytes = await disk.read(path);
    if (bytes.length > GREATEST_BYTES) throw new Refused(shown, 'command.project-too-large', { mb: GREATEST_BYTES / 1024 / 1024 });
    return { path, bytes, ...decode(bytes, shown) };
  });
}

function decode(bytes: Uint8Array, shown: string): Pick<ProjectFile, 'text' | 'byteOrderMark'> {
  const [first, second, third] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) throw new Refused(shown, 'command.project-utf16');
  try {
    // The decoder drops a byte order mark by itself.
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), byteOrderMark: first === 0xef && second === 0xbb && third === 0xbf };
  } catch {
    throw new Refused(shown, 'command.project-not-utf8', { line: lineOfFault(bytes) });
  }
}

/** The line on which the first bytes that are no UTF-8 stand, from 1. */
function lineOfFault(bytes: Uint8Array): number {
  let start = 0;
  for (let line = 1; ; line += 1) {
    const end = bytes.indexOf(10, start);
    try {
      new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(start, end < 0 ? bytes.length : end));
    } catch {
      return line;
    }
    if (end < 0) return line;
    start = end + 1;
  }
}
