/** The beginning, the questions and Hand over, held against WCAG by a checker of its own. */
import { AxeBuilder } from '@axe-core/playwright';
import { type Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { outside } from '../../support/outside.ts';
import { openHouse, openWindow, type WindowHouse } from '../../support/window.ts';
import { goTo, press, writeNote } from './acts.ts';

async function breaches(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.flatMap((rule) => rule.nodes.map((node) => `${rule.id}: ${node.target.join(' ')}`));
}

/** Controls smaller than 44 CSS pixels across: under what WCAG 2.2 2.5.5 (target size, enhanced) asks for a finger. Inputs count with their label. */
const tooSmall = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => [...document.querySelectorAll('button, select, input, a')].flatMap((control) => {
    const box = (control.closest('label') ?? control).getBoundingClientRect();
    return box.width > 0 && (box.height < 44 || box.width < 44) ? [`${control.outerHTML.slice(0, 80)} ${String(box.width)} x ${String(box.height)}`] : [];
  }));

describe.skipIf(!outside('chromium'))('anyone can', () => {
  let house: WindowHouse;
  beforeAll(async () => { house = await openHouse(); });
  afterAll(async () => { await house.close(); });

  it.each(['light', 'dark'] as const)('begin, be asked and hand over, in the %s', async (light) => {
    const { page, context, complaints } = await openWindow(house, { light });
    await page.getByRole('button', { name: /Cedar Bend/ }).waitFor();
    expect(await breaches(page)).toEqual([]);
    expect(await tooSmall(page)).toEqual([]);
    await press(page, /Cedar Bend/);
    await writeNote(page, 'other');
    await page.getByText(/To fix first/).waitFor();
    expect(await breaches(page)).toEqual([]);
    expect(await tooSmall(page)).toEqual([]);
    await press(page, 'Write the package');
    await page.getByRole('dialog', { name: /says Fix/ }).waitFor();
    expect(await breaches(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+o');
    await page.getByRole('dialog', { name: /not saved/i }).waitFor();
    expect(await breaches(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('begin and hand over with the keys alone', async () => {
    const { page, context } = await openWindow(house);
    const focus = async (name: RegExp): Promise<void> => {
      for (let step = 0; step < 60; step += 1) {
        await page.keyboard.press('Tab');
        if (name.test(await page.evaluate(() => document.activeElement?.textContent ?? ''))) return;
      }
      throw new Error(`the keys do not lead to ${String(name)}`);
    };
    await page.getByRole('button', { name: /Cedar Bend/ }).waitFor();
    await focus(/^Cedar Bend/);
    await page.keyboard.press('Enter');
    await focus(/^Hand over$/);
    await page.keyboard.press('Enter');
    await page.getByText(/To fix first/).waitFor();
    await focus(/^Write the package$/);
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog', { name: /says Fix/ });
    await dialog.waitFor();
    // The first answer has the focus, and nothing outside the question can get it.
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Back to the design');
    await focus(/^Write it all the same$/);
    const downloading = page.waitForEvent('download');
    await page.keyboard.press('Enter');
    await downloading;
    await context.close();
  });

  it('stop a package that is being made: nothing is written', async () => {
    const { page, context, complaints } = await openWindow(house);
    let downloads = 0;
    page.on('download', () => { downloads += 1; });
    await press(page, /Kalgara/);
    await goTo(page, 'Hand over');
    await press(page, 'Write the package');
    const knowingly = page.getByRole('button', { name: 'Write it all the same' });
    await knowingly.or(page.getByRole('progressbar')).first().waitFor();
    if (await knowingly.isVisible()) await knowingly.click();
    await press(page, 'Cancel');
    await page.getByText('Ended: nothing was written.').waitFor();
    await page.waitForTimeout(1500);
    expect(downloads).toBe(0);
    await page.getByRole('button', { name: 'Write the package' }).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  });
});
