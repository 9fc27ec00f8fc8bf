import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Io } from '../../../electron/command/io.ts';
import { runPackage } from '../../../electron/command/run-package.ts';
import { nodeDisk } from '../../../electron/disk/index.ts';

export const EXAMPLES = ['juniper-flat', 'kalgara-yard', 'tight-curve'] as const;

export const examplePath = (name: string): string => fileURLToPath(new URL(`../../../shared/examples/${name}.penwright.json`, import.meta.url));

/** The files that the command writes for an example, by path. Throws where it does not write them. */
export async function commandPackage(name: string, options: readonly string[] = []): Promise<ReadonlyMap<string, Uint8Array>> {
  const home = mkdtempSync(join(tmpdir(), 'penwright-'));
  const told: string[] = [];
  const io: Io = {
    cwd: home,
    disk: nodeDisk,
    signal: new AbortController().signal,
    out: (line) => { told.push(line); },
    err: (line) => { told.push(line); },
    progress: () => undefined,
    guard: (write) => write(),
    pause: () => Promise.resolve(),
  };
  try {
    const code = await runPackage([examplePath(name), '--out', 'package', ...options], io);
    if (code !== 0) throw new Error(told.join('\n'));
    return filesIn(join(home, 'package'));
  } finally {
    rmSync(home, { recursive: true });
  }
}

function filesIn(folder: string): ReadonlyMap<string, Uint8Array> {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return new Map(entries.map((entry) => {
    const path = join(entry.parentPath, entry.name);
    return [path.slice(folder.length + 1).replaceAll('\\', '/'), new Uint8Array(readFileSync(path))];
  }));
}
