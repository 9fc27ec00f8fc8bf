import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { outside } from '../support/outside.ts';
import { openHouse, openWindow, type WindowHouse } from '../support/window.ts';

describe.skipIf(!outside('chromium'))('the window in a browser', () => {
  let house: WindowHouse;
  beforeAll(async () => { house = await openHouse(); });
  afterAll(async () => { await house.close(); });

  it('opens an example, lays it out, and complains of nothing', async () => {
    const { page, context, complaints } = await openWindow(house);
    await page.getByRole('button', { name: /juniper/i }).first().click();
    await page.getByRole('navigation', { name: /walk/i }).getByRole('button', { name: /chute-2/ }).waitFor();
    for (const place of ['Lay out', 'Check', 'Make', 'Stake out', 'Hand over', 'Brief']) {
      await page.getByRole('navigation', { name: /places/i }).getByRole('button', { name: new RegExp(`^${place}`) }).click();
      await page.getByRole('navigation', { name: /places/i }).getByRole('button', { name: new RegExp(`^${place}`) }).and(page.locator('[aria-current="page"]')).waitFor();
    }
    expect(complaints).toEqual([]);
    await context.close();
  });
});
