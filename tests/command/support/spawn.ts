import { spawn, type ChildProcess } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { HOME } from '../../../electron/command/terminal-io.ts';
import { nodeDisk } from '../../../electron/disk/index.ts';
import { readTree } from '../../../electron/disk/tree.ts';
import { BUILT_COMMAND } from '../../support/build-command.ts';

export interface Ended {
  readonly code: number | null;
  readonly signal: string | null;
  readonly out: string;
  readonly err: string;
}

export interface Started {
  readonly child: ChildProcess;
  readonly ended: Promise<Ended>;
}

/** Starts the command, bundled, in a process of its own, called in `cwd`. */
export function startCommand(cwd: string, words: readonly string[], environment: Readonly<Record<string, string>> = {}): Started {
  return started(spawn(process.execPath, [BUILT_COMMAND, ...words], { cwd, env: { ...process.env, ...environment } }));
}

/** Starts the command as a person does, through npm from another folder. */
export const startThroughNpm = (cwd: string, words: readonly string[]): Started =>
  started(spawn('npm', ['--prefix', HOME, 'run', 'package', '--', ...words], { cwd }));

function started(child: ChildProcess): Started {
  let out = '';
  let err = '';
  child.stdout?.on('data', (part: Buffer) => { out += part.toString('utf8'); });
  child.stderr?.on('data', (part: Buffer) => { err += part.toString('utf8'); });
  const ended = new Promise<Ended>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code, signal) => { resolve({ code, signal, out, err }); });
  });
  return { child, ended };
}

/** The digest of every file in a folder; null where there is none. */
export async function digests(folder: string): Promise<Record<string, string> | null> {
  if ((await nodeDisk.kindOf(folder)) === null) return null;
  const out: Record<string, string> = {};
  for (const file of (await readTree(nodeDisk, folder)).files) {
    out[file] = createHash('sha256').update(await readFile(join(folder, file))).digest('hex');
  }
  return out;
}

export const wait = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

/** Waits until something stands at a path, or the process has ended. */
export async function until(path: string, { child }: Started): Promise<void> {
  while (child.exitCode === null && child.signalCode === null && (await nodeDisk.kindOf(path)) === null) await wait(1);
}
