import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { outside } from '../support/outside.ts';
import { openHouse, openWindow, reopenWindow, type WindowHouse } from '../support/window.ts';
import { goTo, openExample, stretch } from '../support/window-moves.ts';

describe.skipIf(!outside('chromium'))('work that was not saved', () => {
  let house: WindowHouse;
  beforeAll(async () => { house = await openHouse(); });
  afterAll(async () => { await house.close(); });

  it('is offered when the window opens again after it was killed, and taken up as it was', async () => {
    const { page, context } = await openWindow(house);
    await openExample(page, 'Juniper Flat');
    await goTo(page, 'Lay out');
    await page.getByRole('slider', { name: /length of chute-1/ }).focus();
    await page.keyboard.press('Shift+ArrowUp');
    await expect.poll(() => stretch(page, 'chute-1').textContent()).toContain("10'-10");
    await page.getByText(/not saved/).first().waitFor();
    // Drafts are kept a moment after a change; the page is then ended without a word, as a crash ends it.
    await page.waitForTimeout(3500);
    await page.goto('about:blank');
    await page.close();

    const again = await reopenWindow(house, context);
    await again.getByText('Not saved when the window last ended').waitFor();
    await again.getByRole('button', { name: /^Take up/ }).click();
    await expect.poll(() => stretch(again, 'chute-1').textContent()).toContain("10'-10");
    await context.close();
  });

  it('is asked about before another project is opened', async () => {
    const { page, context } = await openWindow(house);
    await openExample(page, 'Juniper Flat');
    await goTo(page, 'Lay out');
    await page.getByRole('slider', { name: /length of chute-1/ }).focus();
    await page.keyboard.press('ArrowUp');
    await page.getByText(/not saved/).first().waitFor();
    await page.getByRole('button', { name: 'New', exact: true }).click();
    await page.getByRole('button', { name: /Kalgara Yard/ }).click();
    const asked = page.getByRole('dialog', { name: 'Not saved yet' });
    await asked.waitFor();
    await asked.getByRole('button', { name: 'Stay here' }).click();
    await asked.waitFor({ state: 'detached' });
    await context.close();
  });

  it('is saved as a file that the command reads, with what was changed in it', async () => {
    const { page, context } = await openWindow(house);
    await openExample(page, 'Juniper Flat');
    await goTo(page, 'Lay out');
    await page.getByRole('slider', { name: /length of chute-1/ }).focus();
    await page.keyboard.press('ArrowUp');
    // Chromium's own file dialog can't be driven: without it the window hands a download, as it does in other browsers.
    await page.evaluate(() => { Reflect.deleteProperty(window, 'showSaveFilePicker'); });
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save', exact: true }).click()]);
    expect(download.suggestedFilename()).toMatch(/\.penwright\.json$/);
    const project = JSON.parse(readFileSync(await download.path(), 'utf8')) as { chute: { runs: { length: unknown }[] }; marks: Record<string, string> };
    expect(project.chute.runs[0]?.length).toBe(121);
    expect(Object.keys(project.marks).length).toBeGreaterThan(10);
    await context.close();
  });
});
