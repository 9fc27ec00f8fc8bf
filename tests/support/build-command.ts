import { join } from 'node:path';
import { build } from 'vite';
import { HOME } from '../../electron/command/terminal-io.ts';

/** The command in one file, as far below the project's folder as its source, so that it finds the font. */
export const BUILT_COMMAND = join(HOME, '.build', 'command', 'package.mjs');

/** Bundles the command, which then starts in a fraction of the time; its packages stay where npm put them. */
export async function buildCommand(): Promise<void> {
  await build({
    configFile: false,
    root: HOME,
    logLevel: 'warn',
    mode: 'production',
    publicDir: false,
    build: {
      ssr: join(HOME, 'electron/command/package.ts'),
      outDir: join(HOME, '.build', 'command'),
      target: 'node20',
      minify: false,
      rolldownOptions: { checks: { bundlerTimings: false }, output: { format: 'esm', entryFileNames: 'package.mjs', codeSplitting: false } },
    },
  });
}
