/** `npm run looks`: every place of the window at two sizes, light and dark, as pictures in `out/looks`, to be looked at. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { HOME } from '../../electron/command/terminal-io.ts';
import { buildPage } from '../../electron/start/build-window.ts';
import { openHouse, openWindow } from '../support/window.ts';
import { goTo, openExample, PLACE_NAMES } from '../support/window-moves.ts';

const OUT = join(HOME, 'out', 'looks');
const SIZES = [[1280, 720], [1920, 1080]] as const;
const EXAMPLES = process.argv.length > 2 ? process.argv.slice(2) : ['Juniper Flat'];

mkdirSync(OUT, { recursive: true });
await buildPage(HOME);
const house = await openHouse();
for (const light of ['light', 'dark'] as const) {
  for (const [width, height] of SIZES) {
    for (const example of EXAMPLES) {
      const { page, context, complaints } = await openWindow(house, { width, height, light });
      const name = (what: string): string => join(OUT, `${example} ${what} ${String(width)} ${light}.png`);
      await page.screenshot({ path: name('0 begin') });
      await openExample(page, example);
      for (const [index, place] of PLACE_NAMES.entries()) {
        await goTo(page, place);
        await page.waitForTimeout(2500);
        await page.screenshot({ path: name(`${String(index + 1)} ${place.toLowerCase()}`) });
      }
      for (const complaint of complaints) console.log(complaint);
      await context.close();
    }
  }
}
await house.close();
console.log(OUT);
