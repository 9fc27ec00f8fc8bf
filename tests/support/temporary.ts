/** A folder of files for an outside reader, gone when the work is done. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Writes files, hands over the folder, and takes it away again whatever happens. */
export async function inFolder<T>(files: Readonly<Record<string, string | Uint8Array>>, work: (folder: string) => T | Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'penwright-'));
  try {
    for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
