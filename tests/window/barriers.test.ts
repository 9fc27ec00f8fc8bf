import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { outside } from '../support/outside.ts';
import { openHouse, openWindow, type WindowHouse } from '../support/window.ts';
import { barriers, goTo, openExample, PLACE_NAMES } from '../support/window-moves.ts';

/** The gloved finger: 44 px of CSS, WCAG 2.5.5 target size. */
const FINGER = 44;

describe.skipIf(!outside('chromium'))('the window', () => {
  let house: WindowHouse;
  beforeAll(async () => { house = await openHouse(); });
  afterAll(async () => { await house.close(); });

  it.each([['light', 'Juniper Flat'], ['dark', 'Cedar Bend']] as const)('puts nothing in the way of people who do not see well or do not point, in the %s: %s', async (light, example) => {
    const { page, context, complaints } = await openWindow(house, { light });
    const found: string[] = (await barriers(page)).map((line) => `Begin: ${line}`);
    await openExample(page, example);
    for (const place of PLACE_NAMES) {
      await goTo(page, place);
      await page.waitForTimeout(1500);
      found.push(...(await barriers(page)).map((line) => `${place}: ${line}`));
    }
    expect(found).toEqual([]);
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('has no control on a touch screen that is smaller than a gloved finger, and nothing runs out of the window at 1280 x 720', async () => {
    const { page, context } = await openWindow(house, { touch: true });
    await openExample(page, 'Juniper Flat');
    const found: string[] = [];
    for (const place of PLACE_NAMES) {
      await goTo(page, place);
      await page.waitForTimeout(1500);
      found.push(...(await page.evaluate((least) => {
        const small: string[] = [];
        // What is pressed for one of these is its label as well; links inside a line of text are exempt (WCAG 2.5.5).
        for (const control of document.querySelectorAll<HTMLElement>('button, select, input, summary, [role="slider"], [role="button"], [role="tab"]')) {
          const label = control.closest('label');
          const box = (label ?? control).getBoundingClientRect();
          if (box.width === 0 || box.height === 0 || getComputedStyle(control).visibility === 'hidden') continue;
          // A spot on a drawing is as large as what it marks; the row of its table has a control of full size that does the same.
          if (control.closest('.unseen, .spot') !== null) continue;
          if (Math.max(box.height, control.getBoundingClientRect().height) < least - 0.5) small.push(`${control.tagName} ${control.getAttribute('aria-label') ?? control.textContent.slice(0, 40)} ${String(Math.round(box.width))}x${String(Math.round(box.height))}`);
        }
        if (document.documentElement.scrollWidth > innerWidth) small.push(`the page is ${String(document.documentElement.scrollWidth)} wide`);
        return small;
      }, FINGER)).map((line) => `${place}: ${line}`));
    }
    expect(found).toEqual([]);
    await context.close();
  });
});
