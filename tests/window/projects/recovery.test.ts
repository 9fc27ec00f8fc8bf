/** What was not saved: asked about before it is lost, and there again after the browser has gone. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { outside } from '../../support/outside.ts';
import { openHouse, openWindow, reopenWindow, type WindowHouse } from '../../support/window.ts';
import { FIRST_NOTE, goTo, JUNIPER, noteField, press, unsavedSign, writeNote } from './acts.ts';
import { choose, readFile, withOwnFiles, writeFile } from './own-files.ts';

const NAME = 'juniper.penwright.json';
/** Past the moment after which a change is kept. */
const KEPT = 2600;

describe.skipIf(!outside('chromium'))('work that is not saved', () => {
  let house: WindowHouse;
  beforeAll(async () => { house = await openHouse(); });
  afterAll(async () => { await house.close(); });

  async function changedExample(note: string) {
    const all = await openWindow(house);
    await press(all.page, /Juniper Flat/);
    await writeNote(all.page, note);
    return all;
  }

  it('is offered again after a crash, taken up, and gone once saved', async () => {
    const { page, context } = await openWindow(house);
    await withOwnFiles(context);
    await page.reload();
    await writeFile(page, NAME, JUNIPER);
    await choose(page, NAME);
    await press(page, 'Open');
    await writeNote(page, 'before the crash');
    await page.waitForTimeout(KEPT);
    await page.close({ runBeforeUnload: false });

    const again = await reopenWindow(house, context);
    const drafts = again.getByRole('region', { name: /not saved when/i });
    await drafts.getByText(NAME).waitFor();
    await drafts.getByRole('button', { name: 'Take up' }).click();
    await unsavedSign(again).waitFor();
    await goTo(again, 'Hand over');
    expect(await noteField(again).inputValue()).toBe('before the crash');
    await again.keyboard.press('Control+z');
    expect(await noteField(again).inputValue()).toBe(FIRST_NOTE);
    await again.keyboard.press('Control+Shift+z');
    await again.keyboard.press('Control+s');
    await unsavedSign(again).waitFor({ state: 'detached' });
    expect(JSON.parse(await readFile(again, NAME))).toMatchObject({ revision: { note: 'before the crash' } });
    await again.close();
    const third = await reopenWindow(house, context);
    await third.getByRole('heading', { name: /example/i }).waitFor();
    await third.waitForTimeout(300);
    expect(await third.getByRole('button', { name: 'Take up' }).count()).toBe(0);
    await context.close();
  });

  it('of a project that never had a file is kept too, and thrown away in two presses', async () => {
    const { page, context } = await changedExample('kept');
    await page.waitForTimeout(KEPT);
    // A second window sees nothing of it while the first is open.
    const beside = await reopenWindow(house, context);
    await beside.waitForTimeout(500);
    expect(await beside.getByRole('button', { name: 'Take up' }).count()).toBe(0);
    await beside.close();
    await page.close({ runBeforeUnload: false });
    const again = await reopenWindow(house, context);
    await again.getByText('never saved').waitFor();
    await press(again, 'Throw away');
    await press(again, 'Throw away for good');
    await again.getByRole('button', { name: 'Take up' }).waitFor({ state: 'detached' });
    await again.reload();
    await again.waitForTimeout(500);
    expect(await again.getByRole('button', { name: 'Take up' }).count()).toBe(0);
    await context.close();
  });

  it('is asked about before another project is opened', async () => {
    const { page, context, complaints } = await changedExample('mine');
    await press(page, 'New');
    await press(page, /Kalgara/);
    const dialog = page.getByRole('dialog', { name: /not saved/i });
    await dialog.waitFor();
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
    // The focus is where it was, on what was pressed.
    expect(await page.evaluate(() => document.activeElement?.textContent)).toMatch(/Kalgara/);
    await press(page, /^Back to/);
    expect(await noteField(page).inputValue()).toBe('mine');
    await press(page, 'New');
    await press(page, /Kalgara/);
    await press(page, 'Go on without it');
    await page.getByRole('contentinfo').getByText('Kalgara Yard').waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('is asked about by the browser before the page closes, and only then', async () => {
    const { page, context } = await changedExample('mine');
    const asked = new Promise<string>((done) => {
      page.on('dialog', (dialog) => {
        done(dialog.type());
        void dialog.dismiss();
      });
    });
    await page.close({ runBeforeUnload: true });
    expect(await asked).toBe('beforeunload');
    expect(page.isClosed()).toBe(false);
    await page.keyboard.press('Control+z');
    await unsavedSign(page).waitFor({ state: 'detached' });
    const closed = page.waitForEvent('close');
    await page.close({ runBeforeUnload: true });
    await closed;
    await context.close();
  });
});
