/** The window's page on the desktop, driven in a real browser: what its buttons and the menu do to the disk. */
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sha256 } from '../../electron/disk/index.ts';
import { digests } from '../command/support/spawn.ts';
import { readSource } from '../structure/sources.ts';
import { outside } from '../support/outside.ts';
import { goTo, stretch } from '../support/window-moves.ts';
import { openHouse, type WindowHouse } from '../support/window.ts';
import { commandPackage } from '../window/support/command-package.ts';
import { builtPreload, openDesktop } from './support/desktop-page.ts';
import { until } from './support/fake-electron.ts';

const NAME = 'juniper-flat.penwright.json';
const TEXT = readSource(`shared/examples/${NAME}`);

describe.skipIf(!outside('chromium'))('the page on the desktop', () => {
  let house: WindowHouse;
  let preload = '';
  let built = '';
  const homes: string[] = [];
  beforeAll(async () => {
    built = await mkdtemp(join(tmpdir(), 'penwright-'));
    [house, preload] = await Promise.all([openHouse(), builtPreload(built)]);
  });
  afterAll(async () => {
    await house.close();
    for (const home of [built, ...homes]) await rm(home, { recursive: true, force: true });
  });

  /** The page with a project open that a second start of the program handed over. */
  async function opened() {
    const desktop = await openDesktop(house.browser, house.server.address, preload);
    homes.push(desktop.home);
    const path = join(desktop.home, NAME);
    await writeFile(path, TEXT);
    desktop.app.emit('second-instance', {}, [], '', { file: path });
    await desktop.page.getByText(NAME).first().waitFor();
    const menu = (label: RegExp): void => {
      const items = desktop.state.menu.flatMap((one) => one.submenu as Electron.MenuItemConstructorOptions[]);
      (items.find((item) => label.test(item.label ?? ''))?.click as () => void)();
    };
    const lengthen = async (): Promise<void> => {
      await goTo(desktop.page, 'Lay out');
      await desktop.page.getByRole('slider', { name: /length of chute-1/ }).focus();
      await desktop.page.keyboard.press('Shift+ArrowUp');
      await expect.poll(() => stretch(desktop.page, 'chute-1').textContent()).toContain("10'-10");
      await desktop.page.getByText(/not saved/).first().waitFor();
    };
    return { ...desktop, path, menu, lengthen };
  }

  const firstRun = async (path: string): Promise<unknown> =>
    (JSON.parse(await readFile(path, 'utf8')) as { chute: { runs: { length: unknown }[] } }).chute.runs[0]?.length;

  it('opens what it is handed, undoes and saves by the menu, with its draft beside the file until then', async () => {
    const { page, path, home, menu, lengthen, complaints } = await opened();
    await lengthen();
    await expect.poll(() => readdir(home), { timeout: 20_000 }).toContain(`.${NAME}.penwright-draft`);
    menu(/Undo/);
    await expect.poll(() => stretch(page, 'chute-1').textContent()).toContain("10'-0");
    menu(/Redo/);
    await expect.poll(() => stretch(page, 'chute-1').textContent()).toContain("10'-10");
    menu(/^&Save$/);
    await expect.poll(() => firstRun(path), { timeout: 20_000 }).toBe(130);
    await expect.poll(() => readdir(home)).not.toContain(`.${NAME}.penwright-draft`);
    expect((await readdir(home)).filter((name) => name.startsWith('.'))).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it('tells of what somebody else wrote before it writes over it', async () => {
    const { page, path, menu, lengthen } = await opened();
    await lengthen();
    await writeFile(path, TEXT.replace('Juniper Flat', 'Theirs'));
    menu(/^&Save$/);
    const dialog = page.getByRole('dialog');
    await dialog.waitFor();
    expect(await readFile(path, 'utf8')).toContain('Theirs');
    await page.close();
  });

  it('asks before the window closes, and closes when let', async () => {
    const { page, window, lengthen } = await opened();
    await lengthen();
    window.close();
    const dialog = page.getByRole('dialog', { name: 'Not saved yet' });
    await dialog.getByRole('button', { name: 'Stay here' }).click();
    await dialog.waitFor({ state: 'detached' });
    expect(window.closed).toBe(false);
    window.close();
    await dialog.waitFor();
    await dialog.getByRole('button').filter({ hasNotText: /Stay here|Save/ }).first().click();
    await until(() => window.closed);
    expect(window.closed).toBe(true);
    await page.close();
  });

  it('writes the package into the folder that is chosen, as the command does', async () => {
    const { page, state, home, complaints } = await opened();
    state.open = [join(home, 'out')];
    await goTo(page, 'Hand over');
    await page.getByRole('button', { name: 'Choose the folder and write' }).click();
    const knowingly = page.getByRole('button', { name: 'Write it all the same' });
    await knowingly.or(page.getByRole('progressbar')).first().waitFor();
    if (await knowingly.isVisible()) await knowingly.click();
    await page.getByText(/^Written: \d+ files/).waitFor({ timeout: 100_000 });
    const command = await commandPackage('juniper-flat');
    const written = await digests(join(home, 'out')) ?? {};
    expect(Object.keys(written).sort()).toEqual([...command.keys()].sort());
    const same = [...command].filter(([name, bytes]) => written[name] === sha256(bytes)).length;
    process.stderr.write(`the desktop's page wrote ${String(same)} of ${String(command.size)} files with the command's bytes\n`);
    // Where an engine's figures differ in their last digit the list of files differs with them: tests/window holds those to 1e-9.
    expect(same).toBeGreaterThan(command.size / 2);
    await page.getByRole('button', { name: 'Open the folder' }).click();
    await until(() => state.log.includes(`reveal ${join(home, 'out', 'manifest.json')}`));
    expect(state.log).toContain(`reveal ${join(home, 'out', 'manifest.json')}`);
    expect(complaints).toEqual([]);
    await page.close();
  });
});
