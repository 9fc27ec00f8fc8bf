import { type Disk } from '../disk/index.ts';

/** What the command has of the world, so that a test can give it another. */
export interface Io {
  /** Where it was called: paths that are given to it begin here. */
  readonly cwd: string;
  readonly disk: Disk;
  /** Aborted when a person stops the run while it writes. */
  readonly signal: AbortSignal;
  /** A line on standard output and on standard error. */
  out(line: string): void;
  err(line: string): void;
  /** Shows how far the work is, over what it showed before; null clears it. Does nothing where nobody watches. */
  progress(line: string | null): void;
  /** Lets what waits be heard, a stop above all. */
  pause(): Promise<void>;
  /**
   * Does what writes to the disk: a stop is heard, and ends the work in order. Outside of it nothing is written, and a stop ends the
   * process at once, in the midst of whatever it works out.
   */
  guard<T>(write: () => Promise<T>): Promise<T>;
}

/** Exit codes: the contract's, and the one that shells give an interrupted command. */
export const EXIT = { written: 0, fix: 1, fault: 2, unwritten: 3, interrupted: 130 } as const;
