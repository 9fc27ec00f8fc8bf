/** The package as the window makes it in a real browser, against the command's. */
import { unzipSync } from 'fflate';
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { outside } from '../support/outside.ts';
import { openHouse, openWindow, type WindowHouse } from '../support/window.ts';
import { commandPackage } from './support/command-package.ts';
import { firstDifference } from './support/same-figures.ts';

const TITLES = { 'juniper-flat': /Juniper Flat/, 'kalgara-yard': /Kalgara Yard/, 'tight-curve': /Cedar Bend/ } as const;

describe.skipIf(!outside('chromium'))('handing over in a browser', () => {
  let house: WindowHouse;
  beforeAll(async () => { house = await openHouse(); });
  afterAll(async () => { await house.close(); });

  async function handOver(title: RegExp): Promise<Uint8Array> {
    const { page, context, complaints } = await openWindow(house);
    await page.getByRole('button', { name: title }).click();
    await page.getByRole('navigation', { name: /places/i }).getByRole('button', { name: /^Hand over/ }).click();
    const downloading = page.waitForEvent('download', { timeout: 120_000 });
    await page.getByRole('button', { name: 'Write the package' }).click();
    const knowingly = page.getByRole('button', { name: 'Write it all the same' });
    await knowingly.or(page.getByRole('progressbar')).first().waitFor();
    if (await knowingly.isVisible()) await knowingly.click();
    const download = await downloading;
    expect(download.suggestedFilename()).toMatch(/^[a-z0-9-]+\.zip$/);
    await page.getByText(/^Written: \d+ files/).waitFor();
    expect(complaints).toEqual([]);
    const bytes = new Uint8Array(readFileSync(await download.path()));
    await context.close();
    return bytes;
  }

  it.each(Object.entries(TITLES))('gives what the command gives: %s', async (name, title) => {
    const command = await commandPackage(name);
    const zip = await handOver(title);
    const window = new Map(Object.entries(unzipSync(zip)));
    expect([...window.keys()].sort()).toEqual([...command.keys()].sort());
    const manifest = JSON.parse(Buffer.from(window.get('manifest.json') ?? []).toString()) as { files: { path: string }[] };
    expect([...window.keys()]).toEqual([...manifest.files.map((file) => file.path), 'manifest.json']);
    const other = [...window].filter(([path, bytes]) => !Buffer.from(bytes).equals(command.get(path) ?? new Uint8Array())).map(([path]) => path);
    process.stderr.write(`${name}: ${String(window.size - other.length)} of ${String(window.size)} files are the same bytes in the browser and in the command\n`);
    // Digests follow the bytes: where those differ in a figure's last digit, the list of files does too.
    for (const path of other.filter((one) => one !== 'manifest.json')) {
      const text = (bytes: Uint8Array | undefined): string => Buffer.from(bytes ?? []).toString('latin1');
      expect(firstDifference(text(window.get(path)), text(command.get(path))), path).toBeNull();
    }
    if (other.length === 1) expect(other).not.toEqual(['manifest.json']);
  });

  it('gives the same bytes each time', async () => {
    expect(Buffer.from(await handOver(TITLES['tight-curve'])).equals(Buffer.from(await handOver(TITLES['tight-curve'])))).toBe(true);
  });
});

describe('the comparison', () => {
  it('lets figures differ in their last digits and nothing else', () => {
    expect(firstDifference('x 1.0000000001 y', 'x 1 y')).toBeNull();
    expect(firstDifference('x 1.00000001 y', 'x 1 y')).not.toBeNull();
    expect(firstDifference('x 1 y', 'x 1 z')).not.toBeNull();
    expect(firstDifference('x 1', 'x 1 1')).not.toBeNull();
    expect(firstDifference('x 1', 'x -1')).not.toBeNull();
  });
});
