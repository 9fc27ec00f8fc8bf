/** Projects in a real browser: opened, saved and changed by somebody else, with file dialogs and without. */
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { outside } from '../../support/outside.ts';
import { openHouse, openWindow, type WindowHouse } from '../../support/window.ts';
import { goTo, JUNIPER, noteField, press, unsavedSign, writeNote } from './acts.ts';
import { choose, readFile, withOwnFiles, withoutDialogs, writeFile } from './own-files.ts';

const NAME = 'juniper.penwright.json';

describe.skipIf(!outside('chromium'))('projects in a browser', () => {
  let house: WindowHouse;
  beforeAll(async () => { house = await openHouse(); });
  afterAll(async () => { await house.close(); });

  async function opened() {
    const all = await openWindow(house);
    await withOwnFiles(all.context);
    await all.page.reload();
    await writeFile(all.page, NAME, JUNIPER);
    await choose(all.page, NAME);
    await press(all.page, 'Open');
    await goTo(all.page, 'Hand over');
    return all;
  }

  it('without file dialogs are read from a file field and saved as a download', async () => {
    const { page, context, complaints } = await openWindow(house);
    await withoutDialogs(context);
    await page.reload();
    const choosing = page.waitForEvent('filechooser');
    await press(page, 'Open');
    await (await choosing).setFiles({ name: NAME, mimeType: 'application/json', buffer: Buffer.from(`\ufeff${JUNIPER}`) });
    await writeNote(page, 'second');
    await unsavedSign(page).waitFor();
    const saving = page.waitForEvent('download');
    await page.keyboard.press('Control+s');
    const download = await saving;
    expect(download.suggestedFilename()).toBe(NAME);
    const text = readFileSync(await download.path(), 'utf8');
    // The byte order mark that the file had is still there.
    expect(text.startsWith('\ufeff{')).toBe(true);
    expect(JSON.parse(text.slice(1))).toMatchObject({ title: 'Juniper Flat', revision: { note: 'second' } });
    await unsavedSign(page).waitFor({ state: 'detached' });
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('are saved into the same file, and found again as lately open', async () => {
    const { page, context, complaints } = await opened();
    await writeNote(page, 'second');
    await press(page, 'Save');
    await unsavedSign(page).waitFor({ state: 'detached' });
    expect(JSON.parse(await readFile(page, NAME))).toMatchObject({ revision: { note: 'second' } });
    await choose(page, 'other.penwright.json');
    await press(page, 'Save as');
    await page.getByRole('contentinfo').getByText('other.penwright.json').waitFor();
    expect(await readFile(page, 'other.penwright.json')).toBe(await readFile(page, NAME));
    await page.reload();
    await press(page, NAME);
    await goTo(page, 'Hand over');
    expect(await noteField(page).inputValue()).toBe('second');
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('stay as they were where a dialog is shut without choosing', async () => {
    const { page, context, complaints } = await opened();
    await writeNote(page, 'second');
    await unsavedSign(page).waitFor();
    await choose(page, null);
    await press(page, 'Save as');
    // The dialog comes once the marks are known; what is asked before is let be.
    await page.locator('html[data-dialog-shut]').waitFor();
    await page.keyboard.press('Control+o');
    await press(page, 'Go on without it');
    expect(await noteField(page).inputValue()).toBe('second');
    await unsavedSign(page).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('changed by somebody else are not written over unasked', async () => {
    const { page, context, complaints } = await opened();
    await writeNote(page, 'ours');
    await writeFile(page, NAME, JUNIPER.replace('"note": "first issue"', '"note": "theirs"'));
    await page.keyboard.press('Control+s');
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('row', { name: /revision\.note.*theirs.*ours/ }).waitFor();
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
    expect(await readFile(page, NAME)).toContain('"theirs"');

    await page.keyboard.press('Control+s');
    await press(page, 'Open theirs');
    expect(await noteField(page).inputValue()).toBe('theirs');
    await page.keyboard.press('Control+z');
    expect(await noteField(page).inputValue()).toBe('ours');
    await press(page, 'Save');
    await unsavedSign(page).waitFor({ state: 'detached' });
    expect(JSON.parse(await readFile(page, NAME))).toMatchObject({ revision: { note: 'ours' } });

    await writeNote(page, 'ours again');
    await writeFile(page, NAME, 'nothing that is a project');
    await press(page, 'Save');
    await dialog.getByText(/cannot be read/).waitFor();
    await press(page, 'Save over it');
    await unsavedSign(page).waitFor({ state: 'detached' });
    expect(JSON.parse(await readFile(page, NAME))).toMatchObject({ revision: { note: 'ours again' } });
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('that are none are refused with what is wrong, and what was open stays', async () => {
    const { page, context, complaints } = await opened();
    await writeFile(page, 'bad.json', '{ "format": "penwright-project", "version": 1, "title": "x", }');
    await choose(page, 'bad.json');
    await page.keyboard.press('Control+o');
    await page.getByRole('dialog').getByText(/line 1, column/).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await page.getByRole('contentinfo').getByText(NAME).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  });
});
