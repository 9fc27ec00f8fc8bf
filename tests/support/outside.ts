/** Readers outside the project, which prove what we write: present, or missed by name; on a build server missed means failed. */
import { spawnSync } from 'node:child_process';

/** Where they are looked for. A machine with other places says so in the environment. */
export const PYTHON = process.env['PENWRIGHT_PYTHON'] ?? '/usr/bin/python3';
export const CHROMIUM = process.env['PENWRIGHT_CHROMIUM'] ?? '/usr/bin/chromium';

const PROBES = {
  ezdxf: [PYTHON, '-c', 'import ezdxf'],
  ogr: ['ogr2ogr', '--version'],
  poppler: ['pdftoppm', '-v'],
  chromium: [CHROMIUM, '--version'],
} as const satisfies Record<string, readonly [string, ...string[]]>;

export type Outside = keyof typeof PROBES;

/**
 * Whether an outside reader is there, for `describe.skipIf(!outside('ezdxf'))`. Where it is not, its name is told and its checks are
 * skipped; where CI is set it throws, so that a build server never passes by skipping.
 */
export function outside(name: Outside): boolean {
  const present = answers(PROBES[name]);
  const why = missing(name, present, process.env['CI']);
  if (why !== null) process.stderr.write(`${why}\n`);
  return present;
}

/** What to tell of a reader: nothing where it is there. Throws where it is not and `ci` is set. */
export function missing(name: string, present: boolean, ci: string | undefined): string | null {
  if (present) return null;
  const why = `${name} is not here: what it would have checked is skipped`;
  if (ci !== undefined && ci !== '' && ci !== 'false') throw new Error(`${why}, and CI may skip nothing`);
  return why;
}

function answers([command, ...args]: readonly [string, ...string[]]): boolean {
  return spawnSync(command, args, { stdio: 'ignore' }).status === 0;
}

/** Runs an outside reader and gives back what it wrote. Throws with what it complained of where it fails. */
export function run(command: string, args: readonly string[]): string {
  const done = spawnSync(command, args, { encoding: 'utf8', maxBuffer: 512 * 1024 * 1024 });
  if (done.status !== 0) throw new Error(`${command} ${args.join(' ')}: ${done.stderr || String(done.error)}`);
  return done.stdout;
}
