/** The built window in a real browser, served as the loopback server serves it, its content policy included. */
import { type Browser, type BrowserContext, chromium, type Page } from '@playwright/test';
import { fileURLToPath } from 'node:url';
import { startLoopback, type Loopback } from '../../electron/loopback/index.ts';
import { CHROMIUM } from './outside.ts';

export const PAGE_FOLDER = fileURLToPath(new URL('../../.build/window', import.meta.url));

export interface WindowHouse {
  readonly browser: Browser;
  readonly server: Loopback;
  close(): Promise<void>;
}

/** A browser and the page's server, for a file of tests. */
export async function openHouse(): Promise<WindowHouse> {
  const server = await startLoopback(PAGE_FOLDER);
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox'] });
  return {
    browser, server,
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}

export interface OpenWindow {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What the page complained of: errors, and what its content policy refused. */
  readonly complaints: readonly string[];
}

export interface Look {
  readonly width?: number;
  readonly height?: number;
  readonly light?: 'light' | 'dark';
  readonly touch?: boolean;
}

/** The window at a size, fresh: nothing is kept of an earlier one. */
export async function openWindow(house: WindowHouse, look: Look = {}): Promise<OpenWindow> {
  const context = await house.browser.newContext({
    viewport: { width: look.width ?? 1280, height: look.height ?? 720 },
    colorScheme: look.light ?? 'light',
    hasTouch: look.touch ?? false,
    acceptDownloads: true,
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.stack ?? error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(`${message.text()} ${message.location().url}`);
  });
  page.on('crash', () => complaints.push('the page crashed'));
  await page.goto(house.server.address);
  return { page, context, complaints };
}

/** A further page of the same person: what the browser keeps is there. */
export async function reopenWindow(house: WindowHouse, context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(house.server.address);
  return page;
}
