import { join } from 'node:path';
import { calledFrom, HOME } from '../command/terminal-io.ts';
import { startLoopback } from '../loopback/index.ts';
import { BUILT_PAGE } from '../page/index.ts';
import { buildWindow } from './build-window.ts';
import { openAddress } from './open-address.ts';
import { runWindow } from './run-window.ts';
import { fetchRuntime, foundRuntime } from './runtime.ts';
import { startWindow } from './start-window.ts';

const stopped = new Promise<void>((stop) => {
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => { stop(); });
});

process.exitCode = await startWindow(process.argv.slice(2), {
  cwd: calledFrom(process.cwd(), process.env),
  out: (line) => void process.stdout.write(`${line}\n`),
  err: (line) => void process.stderr.write(`${line}\n`),
  build: () => buildWindow(HOME),
  foundRuntime,
  fetchRuntime,
  runWindow: (runtime, file) => runWindow(runtime, HOME, file),
  serve: async () => {
    const loopback = await startLoopback(join(HOME, BUILT_PAGE));
    void stopped.then(() => loopback.close());
    return loopback.address;
  },
  openAddress,
  stopped: () => stopped,
});
