import { type Page } from '@playwright/test';
import { type Font } from '../../core/drafting/font.ts';
import { openHouse, openWindow } from '../support/window.ts';
import { goTo, stretch } from '../support/window-moves.ts';
import { grownProject } from './grown-project.ts';
import { ms } from './timing.ts';

/** Moves of one drag, and the pause between two: a hand on a screen of 60 frames a second. */
const MOVES = 120;
const FRAME = 1000 / 60;

/** How long the window takes from a move of the hand to the redrawn plan, in the browser, beside a frame in which nothing is redrawn. */
export async function dragRows(font: Font): Promise<string[][]> {
  const house = await openHouse();
  const rows = [['drag in the window', 'panels', 'empty frame', 'middle', '95 of 100', 'redraws', 'within two frames']];
  try {
    for (const times of [1, 4]) {
      const { text, panels } = grownProject(font, times);
      const { page, context } = await openWindow(house, { width: 1920, height: 1080 });
      await openText(page, text);
      await goTo(page, 'Lay out');
      const handle = page.getByRole('slider', { name: /radius of the crowd pen/ });
      await handle.waitFor();
      await page.waitForTimeout(3000);
      const empty = await emptyFrame(page);
      const box = await handle.boundingBox();
      if (box === null) throw new Error('there is nothing to take hold of');
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      const held = await page.evaluate(([left, top]) => document.elementFromPoint(left, top)?.closest('[data-handle]')?.getAttribute('data-handle') ?? '', [x, y] as const);
      if (held !== 'crowdPen.radius') throw new Error(`the hand would take hold of something else: ${held}`);
      await page.evaluate(() => { performance.clearMeasures(); });
      await page.mouse.move(x, y);
      await page.mouse.down();
      for (let move = 1; move <= MOVES; move += 1) {
        await page.mouse.move(x, y + 30 * Math.sin((move / MOVES) * 2 * Math.PI));
        await page.waitForTimeout(FRAME);
      }
      await page.mouse.up();
      await page.waitForTimeout(500);
      const taken = (await page.evaluate(() => performance.getEntriesByName('board.redraw').map((entry) => entry.duration))).sort((a, b) => a - b);
      const at = (share: number): number => taken[Math.min(taken.length - 1, Math.floor(taken.length * share))] ?? NaN;
      const quick = taken.filter((duration) => duration <= 2 * FRAME).length / taken.length;
      rows.push([`${String(times)} times the demo`, String(panels), ms(empty), ms(at(0.5)), ms(at(0.95)), String(taken.length), `${String(Math.round(quick * 100))} %`]);
      await context.close();
    }
  } finally {
    await house.close();
  }
  return rows;
}

/** Opens a project through the file input that a browser without its own file dialogs gets. */
async function openText(page: Page, text: string): Promise<void> {
  await page.evaluate(() => { Reflect.deleteProperty(window, 'showOpenFilePicker'); });
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.getByRole('button', { name: /^Open/ }).first().click()]);
  await chooser.setFiles({ name: 'bench.penwright.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await stretch(page, 'crowd-pen').waitFor();
}

/** From one frame to the next where nothing is asked of the page. No function in it bears a name: the page would lack the loader's helper for it. */
const emptyFrame = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const times: number[] = [];
    for (let n = 0; n <= 30; n += 1) times.push(await new Promise<number>((done) => { requestAnimationFrame(done); }));
    return ((times.at(-1) ?? 0) - (times[0] ?? 0)) / 30;
  });
