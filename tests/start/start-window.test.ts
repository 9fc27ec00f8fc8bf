import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { opener } from '../../electron/start/open-address.ts';
import { reasonIn } from '../../electron/start/runtime.ts';
import { runWindow } from '../../electron/start/run-window.ts';
import { readStartOptions, type Starter, startWindow } from '../../electron/start/start-window.ts';

/** A machine that writes down what is asked of it. `runtimes`: what is found each time that it is looked for. */
function machine(runtimes: readonly (string | null)[], changes: Partial<Starter> = {}): { readonly starter: Starter; readonly told: string[] } {
  const told: string[] = [];
  const left = [...runtimes];
  return {
    told,
    starter: {
      cwd: resolve('/ranch'),
      out: (line) => { told.push(line); },
      err: (line) => { told.push(`! ${line}`); },
      build: () => { told.push('(build)'); return Promise.resolve(); },
      foundRuntime: () => left.shift() ?? null,
      fetchRuntime: () => { told.push('(fetch)'); return Promise.resolve('TypeError: fetch failed'); },
      runWindow: (runtime, file) => { told.push(`(window ${runtime} ${file ?? '-'})`); return Promise.resolve({ kind: 'closed' }); },
      serve: () => { told.push('(serve)'); return Promise.resolve('http://127.0.0.1:4567/'); },
      openAddress: (address) => { told.push(`(open ${address})`); },
      stopped: () => { told.push('(stopped)'); return Promise.resolve(); },
      ...changes,
    },
  };
}

describe('starting the window', () => {
  it('builds it and opens it on the desktop, with a file from where it was called', async () => {
    const { starter, told } = machine(['electron']);
    expect(await startWindow(['yard.penwright.json'], starter)).toBe(0);
    expect(told).toEqual(['Building the window …', '(build)', `(window electron ${resolve('/ranch/yard.penwright.json')})`]);
  });

  it('fetches the runtime where there is none', async () => {
    const { starter, told } = machine([null, 'electron'], { fetchRuntime: () => Promise.resolve(null) });
    expect(await startWindow([], starter)).toBe(0);
    expect(told.at(-1)).toBe('(window electron -)');
  });

  it('says in one sentence that the runtime cannot be had, and opens the same window in the browser', async () => {
    const { starter, told } = machine([null, null]);
    expect(await startWindow(['a yard.penwright.json'], starter)).toBe(0);
    expect(told.slice(2)).toEqual([
      'Fetching the desktop runtime, which is done once …', '(fetch)',
      'The desktop runtime cannot be had here (TypeError: fetch failed), so the same window opens in the browser.',
      '(serve)',
      'The window is at http://127.0.0.1:4567/ until you stop this command with Ctrl-C.',
      'Open a yard.penwright.json in the window: a browser does not let it be handed over from here.',
      '(open http://127.0.0.1:4567/)', '(stopped)',
    ]);
  });

  it('opens the browser where the desktop window does not come up', async () => {
    const { starter, told } = machine(['electron'], { runWindow: () => Promise.resolve({ kind: 'failed', reason: 'Missing X server' }) });
    expect(await startWindow([], starter)).toBe(0);
    expect(told).toContain('The desktop window cannot be opened here (Missing X server), so the same window opens in the browser.');
    expect(told).toContain('(open http://127.0.0.1:4567/)');
  });

  it('goes straight to the browser when asked, and tells the address alone when asked', async () => {
    const { starter, told } = machine(['electron']);
    expect(await startWindow(['--browser', '--no-open'], starter)).toBe(0);
    expect(told).toEqual(['Building the window …', '(build)', '(serve)', 'The window is at http://127.0.0.1:4567/ until you stop this command with Ctrl-C.', '(stopped)']);
  });

  it('refuses what it does not know before anything is done', async () => {
    const { starter, told } = machine(['electron']);
    expect(await startWindow(['--port', 'x'], starter)).toBe(2);
    expect(await startWindow(['a', 'b'], starter)).toBe(2);
    expect(told).toEqual([
      '! --port: is not an option of this command; allowed is --browser, --no-open and the path of one project file',
      '! b: is one file too many; allowed is the path of one project file',
    ]);
    expect(readStartOptions([])).toEqual({ file: null, browser: false, open: true });
  });
});

describe('the parts of starting', () => {
  it('opens an address by each platform\'s own means', () => {
    expect(opener('linux', 'http://a/')).toEqual(['xdg-open', ['http://a/']]);
    expect(opener('darwin', 'http://a/')).toEqual(['open', ['http://a/']]);
    expect(opener('win32', 'http://a/')[0]).toBe('rundll32');
  });

  it('tells why a runtime could not be fetched without the list of calls', () => {
    expect(reasonIn('TypeError: fetch failed\n    at node:internal/x\n    at async y\n')).toBe('TypeError: fetch failed');
    expect(reasonIn('')).toBe('');
  });

  it('tells a window that fell over from one that was closed', async () => {
    // A stand-in for the runtime: a program that ends at once, as the runtime does where it has no display.
    const run = (code: string, seenAfter?: number) => runWindow(process.execPath, `--eval=${code}`, null, seenAfter);
    expect(await run('process.exit(0)')).toEqual({ kind: 'closed' });
    expect(await run('console.error("cannot open display"); process.exit(1)')).toEqual({ kind: 'failed', reason: 'cannot open display' });
    expect(await run('process.exit(3)')).toEqual({ kind: 'failed', reason: 'exit code 3' });
    expect(await run('process.exit(3)', 0)).toEqual({ kind: 'closed' });
    expect(await run('process.kill(process.pid, "SIGINT")')).toEqual({ kind: 'closed' });
    expect(await runWindow('no-such-program', '.', null)).toMatchObject({ kind: 'failed' });
  });
});
