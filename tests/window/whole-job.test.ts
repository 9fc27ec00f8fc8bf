import { type Page } from '@playwright/test';
import { unzipSync } from 'fflate';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Manifest } from '../../core/package/index.ts';
import { outside } from '../support/outside.ts';
import { openHouse, openWindow, type WindowHouse } from '../support/window.ts';
import { dragBy, goTo, stretch } from '../support/window-moves.ts';

describe.skipIf(!outside('chromium'))('a facility from nothing', () => {
  let house: WindowHouse;
  beforeAll(async () => { house = await openHouse(); });
  afterAll(async () => { await house.close(); });

  it('is filled in, laid out, dragged, checked, and handed over', async () => {
    const { page, context, complaints } = await openWindow(house);
    await page.getByRole('button', { name: /^From nothing/ }).click();
    // Six fields are asked for; each is told at its own place.
    await page.getByText('6 at fault').first().waitFor();

    await page.getByLabel(/^Title/).fill('Sagebrush Bench');
    await page.getByLabel(/^Radius to the face/).fill('12 ft');
    await page.getByLabel(/^Clear width/).first().fill('710 mm');
    await page.getByLabel(/^Rail section/).first().fill('pipe 2 sch 40');
    await page.getByLabel(/^Post section/).first().fill('pipe 2 1/2 sch 40');
    await page.getByRole('button', { name: 'Add: straight' }).nth(1).click();
    await stretch(page, 'chute-1').waitFor();
    await page.getByRole('button', { name: 'Add: arc' }).nth(1).click();
    await stretch(page, 'chute-2').waitFor();

    // A slip of the pen is told beside its field, and the last good plan stays.
    await page.getByLabel(/^Radius to the face/).fill('twelve');
    await page.getByText('1 at fault').first().waitFor();
    expect(await page.getByLabel(/^Radius to the face/).getAttribute('aria-invalid')).toBe('true');
    await stretch(page, 'crowd-pen').waitFor();
    await page.getByLabel(/^Radius to the face/).fill('12 ft');
    await expect.poll(() => page.getByText('1 at fault').count()).toBe(0);

    await goTo(page, 'Lay out');
    const radius = page.getByRole('slider', { name: /radius of the crowd pen/ });
    await dragBy(page, radius, 0, 40);
    await expect.poll(() => stretch(page, 'crowd-pen').textContent()).not.toContain("R 12'-0\",");

    await goTo(page, 'Check');
    await page.getByText('To fix first').waitFor();
    await goTo(page, 'Make');
    await page.getByRole('button', { name: /Panels: crowd-pen right/ }).first().click();
    await goTo(page, 'Hand over');
    await page.getByRole('button', { name: 'Write the package' }).click();
    const [download] = await Promise.all([page.waitForEvent('download', { timeout: 90_000 }), page.getByRole('button', { name: 'Write it all the same' }).click()]);
    await page.getByText(/^Written: \d+ files/).waitFor();

    const files = unzipSync(readFileSync(await download.path()));
    const paths = Object.keys(files).map((path) => path.replace(/^[^/]+\/(?=manifest|drawings|schedules|report|stations)/, ''));
    for (const path of ['manifest.json', 'drawings/all.pdf', 'schedules/pieces.csv', 'report/findings.pdf', 'stations.json']) expect(paths).toContain(path);
    const named = Object.fromEntries(Object.values(files).map((bytes, index) => [paths[index] ?? '', bytes]));
    const manifest = JSON.parse(new TextDecoder().decode(named['manifest.json'])) as Manifest;
    expect(manifest.project).toBe('Sagebrush Bench');
    for (const file of manifest.files) expect(createHash('sha256').update(named[file.path] ?? '').digest('hex')).toBe(file.sha256);
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('is worked through by the keyboard alone', async () => {
    const { page, context } = await openWindow(house);
    await tabTo(page, /^Juniper Flat/);
    await page.keyboard.press('Enter');
    await stretch(page, 'crowd-pen').waitFor();
    await tabTo(page, /^Lay out/);
    await page.keyboard.press('Enter');
    await page.getByRole('slider', { name: /funnel angle/ }).waitFor();
    await tabTo(page, /funnel angle/);
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => page.getByRole('slider', { name: /funnel angle/ }).getAttribute('aria-valuenow')).toBe('31');
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.getByRole('slider', { name: /funnel angle/ }).getAttribute('aria-valuenow')).toBe('30');
    await page.keyboard.press('Control+Shift+Z');
    await expect.poll(() => page.getByRole('slider', { name: /funnel angle/ }).getAttribute('aria-valuenow')).toBe('31');
    await tabTo(page, /^Hand over/);
    await page.keyboard.press('Enter');
    await tabTo(page, /^Write the package/);
    await page.keyboard.press('Enter');
    const [download] = await Promise.all([
      page.waitForEvent('download', { timeout: 90_000 }),
      tabTo(page, /^Write it all the same/).then(() => page.keyboard.press('Enter')),
    ]);
    expect(download.suggestedFilename()).toMatch(/\.zip$/);
    await context.close();
  });
});

/** Presses Tab until what has the focus bears the name. Throws where a whole round does not come by it. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let step = 0; step < 400; step += 1) {
    await page.keyboard.press('Tab');
    const here = await page.evaluate(() => {
      const focused = document.activeElement;
      return focused === null ? '' : (focused.getAttribute('aria-label') ?? focused.textContent);
    });
    if (name.test(here)) return;
  }
  throw new Error(`no way by Tab to ${String(name)}`);
}
