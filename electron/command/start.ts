import { say } from '../../core/text/index.ts';
import { type Io } from './io.ts';

/** Runs a command to its exit code; a mistake in the program is told as one and ends in a code of its own. */
export async function start(io: Io, run: (io: Io) => Promise<number>): Promise<void> {
  try {
    process.exitCode = await run(io);
  } catch (error) {
    io.progress(null);
    io.err(say('command.bug'));
    io.err(error instanceof Error ? (error.stack ?? error.message) : String(error));
    process.exitCode = 70;
  }
}
