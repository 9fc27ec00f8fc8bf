import { basename, dirname, join } from 'node:path';
import { type StringKey } from '../../core/text/index.ts';
import { type Disk } from './disk.ts';
import { withReason } from './with-reason.ts';

/**
 * Writes a file whole or not at all: a new file beside it, flushed, and renamed over what stands there. Throws `Refused` with `key`.
 * `shown` is the path as a person gave it.
 */
export async function writeFileWhole(disk: Disk, path: string, shown: string, key: StringKey, bytes: Uint8Array): Promise<void> {
  await withReason(shown, key, async () => {
    const target = (await disk.kindOf(path)) === null ? path : await disk.realPath(path);
    const home = dirname(target);
    const fresh = join(home, `.${basename(target)}.${String(process.pid)}.penwright-save`);
    // Only a killed run that bore this process's number can have left one.
    if ((await disk.kindOf(fresh)) !== null) await disk.removeFile(fresh);
    try {
      await disk.writeNew(fresh, bytes);
      await disk.rename(fresh, target);
    } catch (error) {
      await disk.removeFile(fresh).catch(() => undefined);
      throw error;
    }
    await disk.flushFolder(home);
  });
}
