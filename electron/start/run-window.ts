import { spawn } from 'node:child_process';

export type Ran = { readonly kind: 'closed' } | { readonly kind: 'failed'; readonly reason: string };

/** A window that ends this soon with an error was never seen: no display, a library that is missing, a sandbox that is not allowed. */
const SEEN_AFTER_MS = 15_000;

/** Opens the desktop window and waits until it is closed. */
export function runWindow(runtime: string, home: string, file: string | null, seenAfter = SEEN_AFTER_MS): Promise<Ran> {
  return new Promise((done) => {
    const begun = Date.now();
    const child = spawn(runtime, file === null ? [home] : [home, file], { stdio: ['ignore', 'inherit', 'pipe'], env: environment() });
    let told = '';
    child.stderr.on('data', (part: Buffer) => {
      told = (told + part.toString('utf8')).slice(-4000);
      process.stderr.write(part);
    });
    child.on('error', (error) => { done({ kind: 'failed', reason: error.message }); });
    child.on('close', (code, signal) => {
      const stopped = signal === 'SIGINT' || signal === 'SIGTERM' || signal === 'SIGHUP';
      const failed = code !== 0 && !stopped && Date.now() - begun < seenAfter;
      done(failed ? { kind: 'failed', reason: lastLine(told) ?? (signal === null ? `exit code ${String(code)}` : signal) } : { kind: 'closed' });
    });
  });
}

/** With this variable the runtime would be plain Node and open no window. */
function environment(): NodeJS.ProcessEnv {
  const { ELECTRON_RUN_AS_NODE: plain, ...rest } = process.env;
  void plain;
  return rest;
}

const lastLine = (told: string): string | null => told.split('\n').map((line) => line.trim()).filter((line) => line !== '').at(-1) ?? null;
