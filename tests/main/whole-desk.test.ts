import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { type Asked, type Desk } from '../../electron/bridge/desk.ts';
import { nodeDisk } from '../../electron/disk/index.ts';
import { runShell } from '../../electron/main/run-shell.ts';
import { makeDesk } from '../../electron/preload/make-desk.ts';
import { digests } from '../command/support/spawn.ts';
import { sha256 } from '../../electron/disk/index.ts';
import { commandPackage } from '../window/support/command-package.ts';
import { value } from './support/desk.ts';
import { fakeElectron, until } from './support/fake-electron.ts';

const homes: string[] = [];
afterEach(async () => { for (const home of homes.splice(0)) await rm(home, { recursive: true, force: true }); });

/**
 * The desk as the page has it, through the preload and the main process, with the wire between them stood in for by the same copying
 * that Electron does (the structured clone of the HTML standard).
 */
async function wholeDesk(words: readonly string[] = ['electron', '.']) {
  const fake = await fakeElectron();
  homes.push(fake.state.home);
  await runShell(fake.parts, nodeDisk, { words, cwd: fake.state.home, platform: 'linux' });
  const page = fake.state.windows[0]!.webContents;
  const event = { sender: page, senderFrame: page.mainFrame };
  const hears = new Map<string, Set<(event: unknown, ...args: unknown[]) => void>>();
  page.send = (...sent: unknown[]) => {
    const [channel, ...args] = structuredClone(sent) as [string, ...unknown[]];
    for (const hear of hears.get(channel) ?? []) hear({}, ...args);
  };
  const desk: Desk = makeDesk({
    invoke: async (channel, ...args) => structuredClone(await fake.state.handlers.get(channel)?.(event, ...structuredClone(args))),
    send: (channel, ...args) => { fake.state.hearers.emit(channel, event, ...structuredClone(args)); },
    on: (channel, listener) => hears.set(channel, (hears.get(channel) ?? new Set()).add(listener)),
    removeListener: (channel, listener) => hears.get(channel)?.delete(listener),
  });
  return { ...fake, desk, window: fake.state.windows[0]!, home: fake.state.home };
}

describe('the desk, from the page through the preload and the main process to the disk', () => {
  it('opens, saves, keeps a draft, notices another\'s change and saves elsewhere', async () => {
    const { desk, state, home } = await wholeDesk();
    const path = join(home, 'yard.penwright.json');
    await writeFile(path, 'one');
    state.open = [path];
    const opened = value(await desk.openProject())!;
    expect(opened).toMatchObject({ name: 'yard.penwright.json', text: 'one' });
    expect(value(await desk.keepDraft(opened.file, 'half'))).toBeNull();
    expect(await readdir(home)).toContain('.yard.penwright.json.penwright-draft');
    await writeFile(path, 'theirs');
    expect(value(await desk.saveProject(opened.file, 'two', false))).toEqual({ kind: 'changed', text: 'theirs' });
    expect(value(await desk.saveProject(opened.file, 'two', true))).toEqual({ kind: 'saved' });
    expect(await readFile(path, 'utf8')).toBe('two');
    expect(await readdir(home)).not.toContain('.yard.penwright.json.penwright-draft');
    state.open = [join(home, 'other')];
    expect(value(await desk.saveProjectAs('other', 'three'))?.name).toBe('other.penwright.json');
    expect((await desk.recentProjects()).map(({ name }) => name)).toEqual(['other.penwright.json', 'yard.penwright.json']);
    expect(value(await desk.openRecent((await desk.recentProjects())[1]!.id)).file).toBe(opened.file);
  });

  it('offers after a fall what was not saved', async () => {
    const first = await wholeDesk();
    value(await first.desk.keepDraft(null, 'new yard'));
    expect(await first.desk.drafts()).toEqual([]);
    first.window.webContents.emit('render-process-gone');
    const [draft] = await first.desk.drafts();
    expect(draft?.kept).toMatch(/20\d\d/);
    expect(value(await first.desk.takeDraft(draft!.id))).toEqual({ project: null, text: 'new yard' });
    value(await first.desk.dropDraft(null));
    expect(await first.desk.drafts()).toEqual([]);
  });

  it('is asked to open what the program was started with, and whether to close', async () => {
    const { desk, window, app, home } = await wholeDesk();
    const heard: Asked[] = [];
    const stop = desk.onAsked((asked) => { heard.push(asked); });
    await writeFile(join(home, 'yard.penwright'), 'yard');
    app.emit('second-instance', {}, [], '', { file: join(home, 'yard.penwright') });
    await until(() => heard.length > 0);
    expect(heard).toMatchObject([{ kind: 'opened', project: { name: 'yard.penwright', text: 'yard' } }]);
    desk.tellUnsaved(true);
    window.close();
    expect(heard.at(-1)).toEqual({ kind: 'close' });
    desk.letClose(true);
    expect(window.closed).toBe(true);
    stop();
  });

  it('writes the package of an example, the same as the command\'s, and hands its drawings over to print', async () => {
    const made = await commandPackage('tight-curve');
    const { desk, state, home } = await wholeDesk();
    state.open = [join(home, 'out')];
    const { folder } = value(await desk.choosePackage('Tight curve'))!;
    const files = [...made].map(([path, bytes]) => ({ path, bytes: new Uint8Array(bytes) }));
    const kinds = (JSON.parse(Buffer.from(made.get('manifest.json')!).toString('utf8')) as { kinds: string[] }).kinds;
    expect(value(await desk.writePackage(folder, files, kinds))).toBeNull();
    expect(await digests(join(home, 'out'))).toEqual(Object.fromEntries([...made].map(([path, bytes]) => [path, sha256(bytes)])));
    expect(value(await desk.showPackage(folder))).toBeNull();
    expect(state.log.at(-1)).toBe(`reveal ${join(home, 'out', 'manifest.json')}`);
    expect(value(await desk.print(new Uint8Array(made.get('drawings/all.pdf')!), 'Tight curve all.pdf'))).toBeNull();
    expect(state.log.at(-1)).toBe(`open ${join(home, 'user', 'print', 'Tight curve all.pdf')}`);
  });
});
