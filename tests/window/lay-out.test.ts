import { type Page } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { outside } from '../support/outside.ts';
import { openHouse, openWindow, type OpenWindow, type WindowHouse } from '../support/window.ts';
import { dragBy, goTo, openExample, stretch, walk } from '../support/window-moves.ts';

const pen = (page: Page) => stretch(page, 'crowd-pen');
const slider = (page: Page, name: string) => page.getByRole('slider', { name: new RegExp(name) });

describe.skipIf(!outside('chromium'))('the live plan', () => {
  let house: WindowHouse;
  beforeAll(async () => { house = await openHouse(); });
  afterAll(async () => { await house.close(); });

  const inLayOut = async (work: (open: OpenWindow) => Promise<void>): Promise<void> => {
    const open = await openWindow(house);
    try {
      await openExample(open.page, 'Juniper Flat');
      await goTo(open.page, 'Lay out');
      await slider(open.page, 'radius of the crowd pen').waitFor();
      await work(open);
      expect(open.complaints).toEqual([]);
    } finally {
      await open.context.close();
    }
  };

  it('follows a hand that drags, takes the drag back, and brings it again', () => inLayOut(async ({ page }) => {
    const before = await pen(page).textContent();
    const handle = slider(page, 'radius of the crowd pen');
    const was = Number(await handle.getAttribute('aria-valuenow'));
    await dragBy(page, handle, 0, 60);
    await expect.poll(async () => Number(await handle.getAttribute('aria-valuenow'))).toBeGreaterThan(was + 6);
    const after = Number(await handle.getAttribute('aria-valuenow'));
    await expect.poll(() => pen(page).textContent()).not.toBe(before);
    const dragged = await pen(page).textContent();
    // The whole drag is one step.
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => pen(page).textContent()).toBe(before);
    await page.getByRole('button', { name: /^Redo/ }).click();
    await expect.poll(() => pen(page).textContent()).toBe(dragged);
    expect(Number(await handle.getAttribute('aria-valuenow'))).toBe(after);
  }));

  it('is changed by the keyboard alone, a step at a time, by ten, and typed in any unit', () => inLayOut(async ({ page }) => {
    const handle = slider(page, 'length of chute-1');
    await handle.focus();
    const was = Number(await handle.getAttribute('aria-valuenow'));
    await page.keyboard.press('ArrowUp');
    await expect.poll(async () => Number(await handle.getAttribute('aria-valuenow'))).toBe(was + 1);
    await page.keyboard.press('Shift+ArrowUp');
    await expect.poll(async () => Number(await handle.getAttribute('aria-valuenow'))).toBe(was + 11);
    await page.keyboard.press('Enter');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('3500 mm');
    await page.keyboard.press('Enter');
    // 3500 mm is 137.795 in: 11 ft 5 13/16 in.
    await expect.poll(() => stretch(page, 'chute-1').textContent()).toContain('11\'-5 13/16"');
  }));

  it('keeps the last good plan where a figure is impossible, and says so', () => inLayOut(async ({ page }) => {
    const handle = slider(page, 'length of chute-1');
    await handle.focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('as long as it takes');
    await page.keyboard.press('Enter');
    await page.getByText(/is no length from/).waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => stretch(page, 'chute-1').textContent()).toContain("10'-0");
  }));

  it('takes a run more, and a run less, in the order of the walk', () => inLayOut(async ({ page }) => {
    const names = () => walk(page).locator('button > span').allTextContents();
    const before = await names();
    await stretch(page, 'chute-3').click();
    await page.getByRole('button', { name: 'Add a run after' }).click();
    await expect.poll(names).toEqual(before.flatMap((name) => (name === 'chute-3' ? ['chute-3', 'chute-4'] : [name])));
    // What was added is what is chosen now.
    await expect.poll(() => stretch(page, 'chute-4').getAttribute('aria-pressed')).toBe('true');
    await page.getByRole('button', { name: 'Take it out' }).click();
    await expect.poll(names).toEqual(before);
  }));

  it('leads from a finding to its place and on to Check', () => inLayOut(async ({ page }) => {
    await goTo(page, 'Check');
    await page.getByRole('button', { name: /A way to let the last animal out/ }).first().click();
    await page.getByRole('button', { name: /Lay out/ }).last().click();
    await page.getByRole('slider', { name: /radius of the crowd pen/ }).waitFor();
    await page.locator('[aria-current="page"]', { hasText: 'Lay out' }).waitFor();
  }));
});
