import { basename, dirname, join } from 'node:path';
import { type Disk } from './disk.ts';
import { Refused } from './refusal.ts';
import { withReason } from './with-reason.ts';

/**
 * Replaces a file's bytes by a new file renamed over it, so that it is there in full at every moment, old or new.
 * `before` is what it is taken to hold: where somebody has changed it since, it is left alone.
 * Throws `Refused`. `path` has its links followed; `shown` is the path as a person gave it.
 */
export async function replaceFile(disk: Disk, path: string, shown: string, before: Uint8Array, after: Uint8Array): Promise<void> {
  await withReason(shown, 'command.marks-unwritten', async () => {
    const home = dirname(path);
    const fresh = join(home, `.${basename(path)}.${String(process.pid)}.penwright-save`);
    // Only a killed run that bore this process's number can have left one.
    if ((await disk.kindOf(fresh)) !== null) await disk.removeFile(fresh);
    try {
      await disk.writeNew(fresh, after, await disk.modeOf(path));
      if (!same(await disk.read(path), before)) throw new Refused(shown, 'command.marks-changed');
      await disk.rename(fresh, path);
    } catch (error) {
      await disk.removeFile(fresh).catch(() => undefined);
      throw error;
    }
    await disk.flushFolder(home);
  });
}

const same = (a: Uint8Array, b: Uint8Array): boolean => a.length === b.length && a.every((byte, index) => byte === b[index]);
