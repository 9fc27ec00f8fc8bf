import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** Where the package of Electron lies. Throws where it is not installed. */
const electronFolder = (): string => dirname(createRequire(import.meta.url).resolve('electron/package.json'));

/** The program that opens the window, or null where its runtime has not been fetched. */
export function foundRuntime(folder = electronFolder()): string | null {
  const told = join(folder, 'path.txt');
  const home = process.env['ELECTRON_OVERRIDE_DIST_PATH'] ?? join(folder, 'dist');
  const path = existsSync(told) ? join(home, readFileSync(told, 'utf8')) : null;
  return path !== null && existsSync(path) ? path : null;
}

/**
 * Fetches Electron's runtime by the package's own means, which check its digest. Returns the last line of what went wrong, or null.
 * What it is fetched from and through is for a person to set, by the variables that Electron itself reads.
 */
export function fetchRuntime(folder = electronFolder()): Promise<string | null> {
  return new Promise((done) => {
    const child = spawn(process.execPath, [join(folder, 'install.js')], { stdio: ['ignore', 'ignore', 'pipe'] });
    let told = '';
    child.stderr.on('data', (part: Buffer) => { told += part.toString('utf8'); });
    child.on('error', (error) => { done(error.message); });
    child.on('close', (code) => { done(code === 0 ? null : reasonIn(told)); });
  });
}

/** The first line that names the error, without the list of calls under it. */
export function reasonIn(told: string): string {
  const lines = told.split('\n').map((line) => line.trim()).filter((line) => line !== '' && !line.startsWith('at '));
  return lines.find((line) => /error/i.test(line)) ?? lines[0] ?? '';
}
