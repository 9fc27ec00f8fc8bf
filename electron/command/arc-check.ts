import { runArcCheck } from './run-arc-check.ts';
import { start } from './start.ts';
import { terminalIo } from './terminal-io.ts';

await start(terminalIo(process.cwd()), (io) => Promise.resolve(runArcCheck(process.argv.slice(2), io)));
