import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeManifest } from '../../../core/package/manifest.ts';
import { type PackageFile } from '../../../core/package/types.ts';
import { type PackageKind } from '../../../core/package/kinds.ts';
import { type Disk, nodeDisk, refuseLesser, sha256, writePackage } from '../../../electron/disk/index.ts';
import { readTree } from '../../../electron/disk/tree.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** A small package whose every file says `word`. */
export function smallPackage(word: string, kinds: readonly PackageKind[] = ['drawings', 'schedules']): PackageFile[] {
  const files: PackageFile[] = [
    { path: 'yard.penwright.json', kind: 'project', title: 'Project', bytes: bytes(`{"title":"${word}"}`) },
    { path: 'drawings/101 plan.svg', kind: 'drawings', title: 'Plan', bytes: bytes(`<svg>${word}</svg>`) },
    { path: 'drawings/inner/102.svg', kind: 'drawings', title: 'Gates', bytes: bytes(`<svg>2 ${word}</svg>`) },
    { path: `schedules/${word}.csv`, kind: 'schedules', title: 'Pieces', bytes: bytes(word) },
  ];
  const manifest = makeManifest({ project: word, revision: 'A', date: '', units: 'in', kinds }, files, sha256);
  return [...files, { path: 'manifest.json', kind: 'manifest', title: 'Manifest', bytes: bytes(JSON.stringify(manifest)) }];
}

export interface WriteOptions {
  readonly disk?: Disk;
  readonly only?: readonly PackageKind[];
  readonly signal?: AbortSignal;
}

export const write = (target: string, files: readonly PackageFile[], options: WriteOptions = {}): Promise<string | null> =>
  writePackage(options.disk ?? nodeDisk, {
    target,
    shown: 'OUT',
    files,
    mayReplace: (standing) => {
      if (options.only !== undefined) refuseLesser(standing, options.only, 'OUT');
    },
    signal: options.signal ?? new AbortController().signal,
  });

/** All that a folder holds as text: path to content; links and folders without files as `(other)` and `(folder)`. */
export async function snapshot(folder: string): Promise<Record<string, string>> {
  const tree = await readTree(nodeDisk, folder);
  const out: Record<string, string> = {};
  for (const inner of tree.folders) out[`${inner}/`] = '(folder)';
  for (const other of tree.others) out[other] = '(other)';
  for (const file of tree.files) out[file] = await readFile(join(folder, file), 'utf8');
  return out;
}

/** What a package's files look like once written. */
export function picture(files: readonly PackageFile[]): Record<string, string> {
  const out: Record<string, string> = {};
  for (const file of files) {
    const parts = file.path.split('/');
    for (let depth = 1; depth < parts.length; depth += 1) out[`${parts.slice(0, depth).join('/')}/`] = '(folder)';
    out[file.path] = new TextDecoder().decode(file.bytes);
  }
  return out;
}

/** Gives a new folder of its own to a test and takes it away after. */
export async function inTemporaryFolder(test: (folder: string) => Promise<void>): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'penwright-'));
  try {
    await test(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
