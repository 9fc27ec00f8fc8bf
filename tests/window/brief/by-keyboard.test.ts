import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Page } from '@playwright/test';
import { outside } from '../../support/outside.ts';
import { openHouse, openWindow, type WindowHouse } from '../../support/window.ts';
import { stretch } from '../../support/window-moves.ts';

const faulty = (page: Page) => page.getByRole('region', { name: 'What is at fault' });
/** The place of the project file that the hand is on. */
const hand = (page: Page): Promise<string> => page.evaluate(() => document.activeElement?.closest('[data-field]')?.getAttribute('data-field') ?? '');

/** Follows the way from the list of faults to a field. */
async function follow(page: Page, field: string): Promise<void> {
  await faulty(page).getByRole('button', { name: field }).focus();
  await page.keyboard.press('Enter');
}

describe.skipIf(!outside('chromium'))('the brief by keyboard alone', () => {
  let house: WindowHouse;
  beforeAll(async () => { house = await openHouse(); });
  afterAll(async () => { await house.close(); });

  it('goes from nothing to a design that is laid out, each fault a way to its field', async () => {
    const { page, context, complaints } = await openWindow(house);
    await page.getByRole('button', { name: /From nothing/ }).focus();
    await page.keyboard.press('Enter');
    await faulty(page).getByText('6 at fault').waitFor();

    const typed = [
      ['Title', 'title', 'By hand'], ['Radius to the face', 'crowdPen.radius', '12 ft'], ['Clear width', 'chute.width', '28'],
      ['Rail section', 'fences.crowdPen.rail', 'pipe 2 sch 40'], ['Post section', 'fences.crowdPen.post', 'pipe 2 1/2 sch 40'],
    ] as const;
    for (const [name, field, text] of typed) {
      await follow(page, name);
      expect(await hand(page)).toBe(field);
      await page.keyboard.type(text);
      await faulty(page).getByRole('button', { name }).waitFor({ state: 'detached' });
    }

    await follow(page, 'Runs of the chute');
    expect(await hand(page)).toBe('chute.runs');
    // Past the button that tells why.
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await hand(page)).toBe('chute.runs[0].kind');
    await page.keyboard.press('ArrowDown');
    await page.getByText('chute-1: arc').waitFor();
    await page.keyboard.press('ArrowUp');
    await page.getByText('chute-1: straight').waitFor();
    await stretch(page, 'chute-1').waitFor();
    expect(await faulty(page).count()).toBe(0);

    await stretch(page, 'crowd-pen').focus();
    await page.keyboard.press('Enter');
    expect(await page.locator('[data-field="crowdPen.radius"] input').evaluate((input) => {
      const box = input.getBoundingClientRect();
      return box.top > 0 && box.bottom < innerHeight && document.elementFromPoint(box.left + 5, box.top + 5) === input;
    })).toBe(true);
    expect(complaints).toEqual([]);
    await context.close();
  });
});
