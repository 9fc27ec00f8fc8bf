import { runCutList } from './run-cut-list.ts';
import { start } from './start.ts';
import { calledFrom, terminalIo } from './terminal-io.ts';

await start(terminalIo(calledFrom(process.cwd(), process.env)), (io) => runCutList(process.argv.slice(2), io));
