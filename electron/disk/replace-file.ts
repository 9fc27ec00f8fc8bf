import { basename, dirname, join } from 'node:path';
import { type Disk } from './disk.ts';
import { processRuns } from './process-runs.ts';

/**
 * Puts bytes into a file by a new file renamed over it, so that it is there in full at every moment, old or new; a file that is not
 * there yet is made. `mayReplace` is shown what stands there at the last moment (null: nothing) and says whether it may go.
 * Returns whether it was done; where it was not, what stood there still stands. Rejects with what the system refuses.
 * `path` has its links followed.
 */
export async function replaceFile(disk: Disk, path: string, after: Uint8Array, mayReplace: (now: Uint8Array | null) => boolean): Promise<boolean> {
  const home = dirname(path);
  const fresh = freshName(path, process.pid);
  await sweep(disk, path);
  const stands = (await disk.kindOf(path)) !== null;
  try {
    if (stands) {
      const mode = await disk.modeOf(path);
      await disk.writeNew(fresh, after, mode);
      // A new file gets less than it is asked for where the person's settings hold back.
      await disk.setMode(fresh, mode);
    } else await disk.writeNew(fresh, after);
    const now = (await disk.kindOf(path)) === null ? null : await disk.read(path);
    if (!mayReplace(now)) {
      await disk.removeFile(fresh);
      return false;
    }
    await disk.rename(fresh, path);
  } catch (error) {
    await disk.removeFile(fresh).catch(() => undefined);
    throw error;
  }
  await disk.flushFolder(home);
  return true;
}

/** The new file before it is renamed: it bears the process's number, so that two programs never write into one. */
const freshName = (path: string, pid: number): string => join(dirname(path), `.${basename(path)}.${String(pid)}.penwright-save`);

/** Takes away what killed runs left of writing a file. What cannot be taken away stands in nobody's way, but for one of this process's number. */
export async function sweep(disk: Disk, path: string): Promise<void> {
  const home = dirname(path);
  const mine = freshName(path, process.pid);
  if ((await disk.kindOf(mine)) !== null) await disk.removeFile(mine);
  const entries = await disk.list(home).catch(() => []);
  for (const { name, kind } of entries) {
    const pid = Number(/\.(\d+)\.penwright-save$/.exec(name)?.[1] ?? NaN);
    if (kind === 'file' && name === basename(freshName(path, pid)) && !processRuns(pid)) await disk.removeFile(join(home, name)).catch(() => undefined);
  }
}

export const sameBytes = (a: Uint8Array, b: Uint8Array): boolean => a.length === b.length && a.every((byte, index) => byte === b[index]);
