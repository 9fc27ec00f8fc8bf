/** The window's page in a browser with the desktop behind it: the built preload, the main process with Electron stood in for, the real disk. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type Browser, type Page } from '@playwright/test';
import { nodeDisk } from '../../../electron/disk/index.ts';
import { runShell } from '../../../electron/main/run-shell.ts';
import { buildShell } from '../../../electron/start/build-window.ts';
import { ROOT } from '../../structure/sources.ts';
import { fakeElectron } from './fake-electron.ts';

/** Bytes have no form in what passes between the browser and the test: they go as a text that says so. */
const packed = (value: unknown): string => JSON.stringify(value, (_, part: unknown) => (part instanceof Uint8Array ? { bytes64: Buffer.from(part).toString('base64') } : part));
const unpacked = (text: string): unknown[] => JSON.parse(text, (_, part: unknown) =>
  (typeof part === 'object' && part !== null && 'bytes64' in part ? new Uint8Array(Buffer.from(String(part.bytes64), 'base64')) : part)) as unknown[];

/** In the page: `require('electron')` of the preload, its messages handed to the test. */
const STAND_IN = `
  const pack = (value) => JSON.stringify(value, (_, part) => {
    if (!(part instanceof Uint8Array)) return part;
    let text = '';
    for (let at = 0; at < part.length; at += 32768) text += String.fromCharCode(...part.subarray(at, at + 32768));
    return { bytes64: btoa(text) };
  });
  const hears = new Map();
  window.hearFromMain = (channel, asked) => { for (const hear of hears.get(channel) ?? []) hear({}, asked); };
  const electron = {
    contextBridge: { exposeInMainWorld: (name, desk) => { window[name] = desk; } },
    ipcRenderer: {
      invoke: async (channel, ...args) => JSON.parse(await window.invokeMain(channel, pack(args))),
      send: (channel, ...args) => { void window.sendMain(channel, pack(args)); },
      on: (channel, hear) => { hears.set(channel, (hears.get(channel) ?? new Set()).add(hear)); },
      removeListener: (channel, hear) => { hears.get(channel)?.delete(hear); },
    },
  };
`;

declare global {
  interface Window {
    readonly hearFromMain: (channel: string, asked: unknown) => void;
  }
}

/** Builds the preload into a folder, for `openDesktop`. */
export async function builtPreload(folder: string): Promise<string> {
  await buildShell(ROOT, folder);
  return readFile(join(folder, 'preload.cjs'), 'utf8');
}

/** Opens the page that `address` serves as the desktop's. */
export async function openDesktop(browser: Browser, address: string, preload: string) {
  const fake = await fakeElectron();
  await runShell(fake.parts, nodeDisk, { words: ['electron', '.'], cwd: fake.state.home, platform: 'linux' });
  const desktop = fake.state.windows[0]!;
  const contents = desktop.webContents;
  const event = { sender: contents, senderFrame: contents.mainFrame };
  const page: Page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.stack ?? error.message));
  page.on('console', (message) => { if (message.type() === 'error') complaints.push(message.text()); });
  await page.exposeFunction('invokeMain', async (channel: string, args: string) => packed(await fake.state.handlers.get(channel)?.(event, ...unpacked(args))));
  await page.exposeFunction('sendMain', (channel: string, args: string) => { fake.state.hearers.emit(channel, event, ...unpacked(args)); });
  contents.send = (...sent: unknown[]) => { void page.evaluate(([channel, asked]) => { window.hearFromMain(String(channel), asked); }, sent); };
  await page.addInitScript(`{ ${STAND_IN} const require = () => electron; { ${preload} } }`);
  await page.goto(address);
  return { ...fake, window: desktop, page, complaints, home: fake.state.home };
}
