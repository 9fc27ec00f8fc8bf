import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { nodeDisk } from '../disk/index.ts';
import { type Io } from './io.ts';

/** The folder of this program. */
export const HOME = resolve(dirname(fileURLToPath(import.meta.url)), '..', '..');

/**
 * Where the command was called. npm runs its scripts in the program's own folder and says in INIT_CWD where it was called itself;
 * called in another way, or by something that npm runs, the folder is the process's own.
 */
export function calledFrom(cwd: string, environment: Readonly<Record<string, string | undefined>>): string {
  const told = environment['INIT_CWD'];
  return told !== undefined && told !== '' && resolve(cwd) === HOME ? told : cwd;
}

const STOPS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** The world of a command that a person started: this process's streams, disk and signals. */
export function terminalIo(cwd: string): Io {
  const stop = new AbortController();
  const watched = process.stderr.isTTY;
  let shown = false;
  // Some terminals do not tell how wide they are.
  const width = (): number => (process.stderr.columns > 0 ? process.stderr.columns : 80);
  return {
    cwd,
    disk: nodeDisk,
    signal: stop.signal,
    out: (line) => void process.stdout.write(`${line}\n`),
    err: (line) => void process.stderr.write(`${line}\n`),
    progress: (line) => {
      if (!watched || (line === null && !shown)) return;
      // Back to the start of the line, and clear it to its end.
      process.stderr.write(`\r\u001b[K${line === null ? '' : line.slice(0, width() - 1)}`);
      shown = line !== null;
    },
    guard: async (write) => {
      // Once: a second Ctrl-C ends the process at once, and the next run mends what it leaves.
      const hear = (signal: NodeJS.Signals): void => { stop.abort(new Error(signal)); };
      for (const signal of STOPS) process.once(signal, hear);
      try {
        return await write();
      } finally {
        for (const signal of STOPS) process.removeListener(signal, hear);
      }
    },
    pause: () => new Promise((done) => setImmediate(done)),
  };
}
