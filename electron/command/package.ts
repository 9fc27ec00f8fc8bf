import { runPackage } from './run-package.ts';
import { start } from './start.ts';
import { calledFrom, terminalIo } from './terminal-io.ts';

await start(terminalIo(calledFrom(process.cwd(), process.env)), (io) => runPackage(process.argv.slice(2), io));
