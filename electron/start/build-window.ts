import { join } from 'node:path';
import { build, type InlineConfig } from 'vite';
import { BUILT_PAGE, BUILT_SHELL } from '../page/index.ts';

/** The shell's two parts: each one CommonJS file with all that it needs in it, for a sandboxed preload can load nothing. */
const SHELL_PARTS = { main: 'electron/main/main.ts', preload: 'electron/preload/preload.ts' } as const;

/** No newer than the Node that Electron's own package asks for, which the one inside it is not older than. */
const SHELL_TARGET = 'node22';

/** How long each part of the bundler took is of no use to a person who waits for a window. */
const checks = { bundlerTimings: false };

/** Builds the page, the main process and the preload into `.build`. Throws what the bundler throws. */
export async function buildWindow(home: string): Promise<void> {
  await buildPage(home);
  await buildShell(home);
}

/** Builds the page by the program's own bundler settings, by default where the program looks for it. */
export async function buildPage(home: string, out = join(home, BUILT_PAGE)): Promise<void> {
  await build({ configFile: join(home, 'vite.config.ts'), root: join(home, 'renderer'), logLevel: 'warn', mode: 'production', build: { outDir: out, emptyOutDir: true, rolldownOptions: { checks } } });
}

/** Builds the main process and the preload into a folder, by default where the program looks for them. */
export async function buildShell(home: string, out = join(home, BUILT_SHELL)): Promise<void> {
  for (const [name, entry] of Object.entries(SHELL_PARTS)) await build(shellPart(home, out, name, entry));
}

const shellPart = (home: string, out: string, name: string, entry: string): InlineConfig => ({
  configFile: false,
  root: home,
  logLevel: 'warn',
  mode: 'production',
  publicDir: false,
  ssr: { noExternal: true },
  build: {
    ssr: join(home, entry),
    outDir: out,
    emptyOutDir: false,
    target: SHELL_TARGET,
    minify: false,
    rolldownOptions: {
      checks,
      external: ['electron'],
      output: { format: 'cjs', entryFileNames: `${name}.cjs`, codeSplitting: false },
    },
  },
});
