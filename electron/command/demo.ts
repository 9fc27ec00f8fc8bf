import { resolve } from 'node:path';
import { say } from '../../core/text/index.ts';
import { runPackage } from './run-package.ts';
import { start } from './start.ts';
import { HOME, terminalIo } from './terminal-io.ts';

const OUT = 'out/demo';

await start(terminalIo(HOME), async (io) => {
  const code = await runPackage(['shared/examples/juniper-flat.penwright.json', '--out', OUT], io);
  if (code === 0) io.out(say('command.demo', { folder: resolve(HOME, OUT) }));
  return code;
});
