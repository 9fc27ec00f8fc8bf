/** The policy and the refusals as a real browser keeps them; the reader is Chromium. */
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { type Browser, chromium, type Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Loopback, startLoopback } from '../../electron/loopback/index.ts';
import { CHROMIUM, outside } from '../support/outside.ts';

/** A worker that tells whether it may compile, and whether it may also run what is written in a text. */
const TRIES_WASM = `
  const could = [];
  await WebAssembly.compile(Uint8Array.of(0, 97, 115, 109, 1, 0, 0, 0)).then(() => could.push('wasm'), () => {});
  try { (0, eval)('1'); could.push('eval'); } catch { /* refused */ }
  postMessage(could.join(' '));`;

/** A page that tries what is not allowed beside what is, and writes down in its title what it could. */
const PAGE = {
  'index.html': `<!doctype html><meta charset="utf-8"><title>nothing</title>
    <script>document.title = 'an inline script ran';</script>
    <img src="x" onerror="document.title = 'an inline handler ran'">
    <div id="styled" style="color: rgb(1, 2, 3)"></div>
    <script type="module" src="./assets/own.js"></script>`,
  'assets/own.js': `
    const could = [];
    const tries = async (name, act) => { try { await act(); could.push(name); } catch { /* refused */ } };
    const loads = (element) => new Promise((done, failed) => { element.onload = done; element.onerror = failed; document.body.append(element); });
    const make = (name, part) => Object.assign(document.createElement(name), part);
    await tries('module', () => import('./more.js'));
    await tries('worker', () => new Promise((done, failed) => { const worker = new Worker(new URL('./worker.js', import.meta.url), { type: 'module' }); worker.onmessage = done; worker.onerror = failed; }));
    const compiles = (name) => () => new Promise((done, failed) => { const worker = new Worker(new URL(name, import.meta.url), { type: 'module' }); worker.onmessage = ({ data }) => (data === 'wasm' ? done() : failed(new Error(data))); worker.onerror = failed; });
    await tries('wasm', () => WebAssembly.compile(Uint8Array.of(0, 97, 115, 109, 1, 0, 0, 0)));
    await tries('wasm in a worker', compiles('./plain-worker-1.js'));
    await tries('wasm in the cut worker', compiles('./cut-worker-1.js'));
    await tries('wasm in the package worker', compiles('./package-worker-1.js'));
    await tries('fetch own', async () => { if (!(await fetch('./assets/data.json')).ok) throw new Error(); });
    await tries('style object', () => { const div = document.getElementById('styled'); div.style.width = '7px'; if (getComputedStyle(div).width !== '7px') throw new Error(); });
    await tries('data image', () => loads(make('img', { src: 'data:image/gif;base64,R0lGODlhAQABAAAAACH5BAEKAAEALAAAAAABAAEAAAICTAEAOw==' })));
    await tries('inline style', () => { if (getComputedStyle(document.getElementById('styled')).color !== 'rgb(1, 2, 3)') throw new Error(); });
    await tries('eval', () => (0, eval)('1'));
    await tries('function from text', () => new Function('return 1')());
    await tries('blob script', () => import(URL.createObjectURL(new Blob(['export {}'], { type: 'text/javascript' }))));
    await tries('blob worker', () => new Promise((done, failed) => { const worker = new Worker(URL.createObjectURL(new Blob(['postMessage(1)']))); worker.onmessage = done; worker.onerror = failed; }));
    const other = new URLSearchParams(location.search).get('other');
    await tries('fetch other', () => fetch(other, { mode: 'no-cors' }));
    await tries('script other', () => loads(make('script', { src: other + 'script.js' })));
    await tries('image other', () => loads(make('img', { src: other + 'image.gif' })));
    await tries('base', () => { document.head.append(make('base', { href: other })); if (new URL('x', document.baseURI).origin !== new URL(other).origin) throw new Error(); });
    document.title = could.join(', ');`,
  'assets/more.js': 'export {};',
  'assets/plain-worker-1.js': TRIES_WASM,
  'assets/cut-worker-1.js': TRIES_WASM,
  'assets/package-worker-1.js': TRIES_WASM,
  'assets/worker.js': 'postMessage(1);',
  'assets/data.json': '{}',
};

describe.skipIf(!outside('chromium'))('in a browser the loopback server\'s page', () => {
  let home = '';
  let loopback: Loopback;
  let browser: Browser;
  /** Another program's page on the same machine. */
  let stranger: Server;
  let other = '';
  const asked: string[] = [];

  beforeAll(async () => {
    home = await mkdtemp(join(tmpdir(), 'penwright-'));
    for (const [name, text] of Object.entries(PAGE)) {
      await mkdir(dirname(join(home, name)), { recursive: true });
      await writeFile(join(home, name), text);
    }
    loopback = await startLoopback(home);
    stranger = createServer((request, response) => {
      asked.push(request.url ?? '');
      response.writeHead(200, { 'Content-Type': 'text/html', 'Access-Control-Allow-Origin': '*' });
      response.end('<!doctype html><title>stranger</title>');
    });
    await new Promise<void>((done) => stranger.listen(0, '127.0.0.1', done));
    other = `http://127.0.0.1:${String((stranger.address() as AddressInfo).port)}/`;
    browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox'] });
  });
  afterAll(async () => {
    await browser.close();
    stranger.close();
    await loopback.close();
    await rm(home, { recursive: true });
  });

  const titled = async (page: Page): Promise<string> => {
    await page.waitForFunction(() => document.title !== 'nothing' && document.title !== 'stranger');
    return page.title();
  };

  it('runs its own files, and nothing that is written into it or lies elsewhere', async () => {
    const page = await browser.newPage();
    await page.goto(`${loopback.address}?other=${encodeURIComponent(other)}`);
    expect(await titled(page)).toBe('module, worker, wasm in the cut worker, wasm in the package worker, fetch own, style object, data image');
    expect(asked).toEqual([]);
    await page.close();
  });

  it('can be neither read, run nor framed by another page on the same machine', async () => {
    const page = await browser.newPage();
    await page.goto(other);
    await page.evaluate(async (address) => {
      const could: string[] = [];
      const tries = async (name: string, act: () => Promise<unknown>): Promise<void> => { try { await act(); could.push(name); } catch { /* refused */ } };
      const loads = (element: HTMLElement): Promise<unknown> => new Promise((done, failed) => { element.onload = done; element.onerror = failed; document.body.append(element); });
      await tries('read', () => fetch(address));
      await tries('script', () => loads(Object.assign(document.createElement('script'), { src: `${address}assets/more.js`, type: 'module' })));
      await tries('plain script', () => loads(Object.assign(document.createElement('script'), { src: `${address}assets/worker.js` })));
      const frame = Object.assign(document.createElement('iframe'), { src: address });
      await loads(frame);
      // A frame that was refused is of an origin of its own, whose page can't be looked into; so is one that was let in. What it holds is told below.
      document.title = `could: ${could.join(', ')}`;
    }, loopback.address);
    expect(await titled(page)).toBe('could:');
    const frames = page.frames().filter((frame) => frame !== page.mainFrame());
    expect(await Promise.all(frames.map((frame) => frame.evaluate(() => document.getElementById('styled') === null)))).toEqual([true]);
    expect(frames.map((frame) => frame.url().startsWith('chrome-error:'))).toEqual([true]);
    await page.close();
  });
});
