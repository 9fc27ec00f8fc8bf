import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runPackage } from '../../../electron/command/run-package.ts';
import { type Disk, nodeDisk } from '../../../electron/disk/index.ts';

/** What a run of the command came to. */
export interface Outcome {
  readonly code: number;
  readonly out: readonly string[];
  readonly err: readonly string[];
  readonly progress: readonly (string | null)[];
}

export interface RunOptions {
  readonly disk?: Disk;
  readonly signal?: AbortSignal;
  /** Called after each file that is made. */
  readonly onPause?: () => void;
}

/** The command itself, in this process, called in `cwd`. */
export async function run(cwd: string, words: readonly string[], options: RunOptions = {}): Promise<Outcome> {
  const out: string[] = [];
  const err: string[] = [];
  const progress: (string | null)[] = [];
  const code = await runPackage(words, {
    cwd,
    disk: options.disk ?? nodeDisk,
    signal: options.signal ?? new AbortController().signal,
    out: (line) => void out.push(line),
    err: (line) => void err.push(line),
    progress: (line) => void progress.push(line),
    guard: (write) => write(),
    pause: () => {
      options.onPause?.();
      return Promise.resolve();
    },
  });
  return { code, out, err, progress };
}

export interface Project extends Record<string, unknown> {
  title: string;
}

/** An example's project, the demo's unless another is named, as a plain object that a test may spoil. */
export async function exampleProject(name = 'juniper-flat'): Promise<Project> {
  return JSON.parse(await readFile(new URL(`../../../shared/examples/${name}.penwright.json`, import.meta.url), 'utf8')) as Project;
}

/** Sets a value deep in plain data: `['chute', 'runs', 1, 'angle']`. `undefined` takes it away. */
export function put(data: unknown, path: readonly (string | number)[], value: unknown): void {
  const [last] = path.slice(-1);
  let at = data as Record<string | number, unknown>;
  for (const step of path.slice(0, -1)) {
    at[step] ??= {};
    at = at[step] as Record<string | number, unknown>;
  }
  if (last === undefined) throw new Error('an empty path');
  if (value === undefined) Reflect.deleteProperty(at, last);
  else at[last] = value;
}

/** A folder with `yard.penwright.json` in it, taken away after. */
export async function withProject(project: string | Uint8Array | object, test: (home: string) => Promise<void>): Promise<void> {
  const home = await mkdtemp(join(tmpdir(), 'penwright-'));
  try {
    const content = typeof project === 'string' || project instanceof Uint8Array ? project : JSON.stringify(project, null, 2);
    await writeFile(join(home, 'yard.penwright.json'), content);
    await test(home);
  } finally {
    await rm(home, { recursive: true, force: true });
  }
}

export const WORDS = ['yard.penwright.json', '--out', 'out'] as const;
/** A package that is soon made, for what is the same of any. */
export const PART = [...WORDS, '--only', 'report,stations'] as const;
export const SCHEDULES = [...WORDS, '--only', 'schedules'] as const;
