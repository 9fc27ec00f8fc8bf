import { rm, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { ASKED_CHANNEL, channelOf, LISTENING_CHANNEL, NOTICES, REQUESTS } from '../../electron/bridge/names.ts';
import { nodeDisk } from '../../electron/disk/index.ts';
import { runShell } from '../../electron/main/run-shell.ts';
import { fakeElectron, fakeEvent, type FakeWindow, until } from './support/fake-electron.ts';

type Fake = Awaited<ReturnType<typeof fakeElectron>>;
const homes: string[] = [];
afterEach(async () => { for (const home of homes.splice(0)) await rm(home, { recursive: true, force: true }); });

/** The shell, started, with its window. */
async function started(words: readonly string[] = ['electron', '.'], options: Parameters<typeof fakeElectron>[0] = {}): Promise<Fake & { readonly window: FakeWindow; listen(): void; tell(channel: string, ...args: unknown[]): void }> {
  const fake = await fakeElectron(options);
  homes.push(fake.state.home);
  await runShell(fake.parts, nodeDisk, { words, cwd: fake.state.home, platform: 'linux' });
  const window = fake.state.windows[0]!;
  const page = window.webContents;
  const tell = (channel: string, ...args: unknown[]): void => { fake.state.hearers.emit(channel, { sender: page, senderFrame: page.mainFrame }, ...args); };
  return { ...fake, window, tell, listen: () => { tell(LISTENING_CHANNEL); } };
}

describe('the program starts', () => {
  it('with the sandbox and the scheme before it is ready, one window, and every message answered', async () => {
    const { state, window } = await started();
    expect(state.log.slice(0, 3)).toEqual(['schemes', 'sandbox', 'ready']);
    expect(state.schemes).toEqual([{ scheme: 'penwright', privileges: { standard: true, secure: true, supportFetchAPI: true } }]);
    expect(state.windows).toHaveLength(1);
    expect(window.done).toEqual(['load penwright://window/index.html']);
    window.emit('ready-to-show');
    expect(window.done.at(-1)).toBe('show');
    expect([...state.handlers.keys()]).toEqual(REQUESTS.map(channelOf));
    expect(state.hearers.eventNames()).toEqual([...NOTICES.map(channelOf), LISTENING_CHANNEL]);
    expect(await (await state.served.get('penwright')!(new Request('http://x/'))).text()).toBe('');
  });

  it('with a page that has nothing of the machine but the preload', async () => {
    const { state, window } = await started(['penwright'], { packed: true });
    expect(window.options.webPreferences).toEqual({
      preload: join(state.home, 'app', '.build', 'shell', 'preload.cjs'),
      contextIsolation: true, sandbox: true, nodeIntegration: false, nodeIntegrationInWorker: false, nodeIntegrationInSubFrames: false,
      webSecurity: true, allowRunningInsecureContent: false, experimentalFeatures: false, webviewTag: false, navigateOnDragDrop: false, spellcheck: false, devTools: false,
    });
    expect((await started()).window.options.webPreferences?.devTools).toBe(true);
  });

  it('once: a second start hands its file to the first and ends', async () => {
    const second = await fakeElectron({ first: false });
    homes.push(second.state.home);
    await runShell(second.parts, nodeDisk, { words: ['electron', '.', '--flag', 'yard.penwright'], cwd: second.state.home, platform: 'linux' });
    expect(second.state.lock).toEqual({ file: resolve(second.state.home, 'yard.penwright') });
    expect(second.state.log).toContain('quit');
    expect(second.state.windows).toEqual([]);
  });

  it('and ends with its window, on every system', async () => {
    const { app, state } = await started();
    app.emit('window-all-closed');
    expect(state.log.at(-1)).toBe('quit');
  });
});

describe('the page is kept in its place', () => {
  it('no other address, no window, no page within it', async () => {
    const { window } = await started();
    const page = window.webContents;
    expect(page.windows?.({ url: 'https://penwright.example' })).toEqual({ action: 'deny' });
    for (const name of ['will-navigate', 'will-frame-navigate', 'will-redirect', 'will-attach-webview']) {
      const event = fakeEvent();
      page.emit(name, event, 'penwright://window/index.html');
      expect([name, event.prevented]).toEqual([name, true]);
    }
  });

  it('no permission, no device, no download', async () => {
    const { state } = await started();
    const answers: boolean[] = [];
    for (const permission of ['media', 'geolocation', 'notifications', 'openExternal', 'fileSystem', 'clipboard-read']) state.permission?.({}, permission, (yes) => { answers.push(yes); });
    expect(answers).toEqual([false, false, false, false, false, false]);
    expect([state.check?.(), state.device?.()]).toEqual([false, false]);
    const event = fakeEvent();
    state.sessionEvents.emit('will-download', event);
    expect(event.prevented).toBe(true);
  });

  it('no request but to its own files and pictures', async () => {
    const { state } = await started(['penwright'], { packed: true });
    const cancels = (url: string): boolean | undefined => {
      let cancel: boolean | undefined;
      state.request?.({ url }, (reply) => { cancel = reply.cancel; });
      return cancel;
    };
    for (const url of ['penwright://window/assets/a.js', 'data:image/png;base64,AA==', 'blob:penwright://window/1-2']) expect([url, cancels(url)]).toEqual([url, false]);
    for (const url of ['https://penwright.example/', 'http://127.0.0.1/', 'file:///etc/passwd', 'ws://x', 'data:text/html,x', 'blob:https://x/1', 'penwright://other/', 'devtools://devtools/x']) expect([url, cancels(url)]).toEqual([url, true]);
  });
});

describe('a file from outside the window', () => {
  const file = async (fake: Fake, name: string, text = '{}'): Promise<string> => {
    const path = join(fake.state.home, name);
    await writeFile(path, text);
    return path;
  };

  it('given at the start waits until the page listens', async () => {
    const fake = await fakeElectron();
    homes.push(fake.state.home);
    await file(fake, 'yard.penwright', '{"title":"Yard"}');
    await runShell(fake.parts, nodeDisk, { words: ['electron', '.', 'yard.penwright'], cwd: fake.state.home, platform: 'linux' });
    const page = fake.state.windows[0]!.webContents;
    await new Promise((done) => setTimeout(done, 50));
    expect(page.sent).toEqual([]);
    fake.state.hearers.emit(LISTENING_CHANNEL, { sender: page, senderFrame: page.mainFrame });
    await until(() => page.sent.length > 0);
    expect(page.sent).toMatchObject([[ASKED_CHANNEL, { kind: 'opened', project: { name: 'yard.penwright', text: '{"title":"Yard"}' } }]]);
  });

  it('of a second start or of the machine\'s file window is opened, and the window comes forward', async () => {
    const fake = await started();
    fake.listen();
    fake.window.minimized = true;
    fake.app.emit('second-instance', {}, [], '', { file: await file(fake, 'a.penwright') });
    expect(fake.window.done.slice(-2)).toEqual(['restore', 'focus']);
    const event = fakeEvent();
    fake.app.emit('open-file', event, await file(fake, 'b.penwright.json'));
    expect(event.prevented).toBe(true);
    const { sent } = fake.window.webContents;
    await until(() => sent.length > 1);
    expect(sent).toMatchObject([[ASKED_CHANNEL, { project: { name: 'a.penwright' } }], [ASKED_CHANNEL, { project: { name: 'b.penwright.json' } }]]);
  });

  it('told of in another way by a second start is nothing', async () => {
    const fake = await started();
    fake.listen();
    for (const told of [undefined, null, 'a', { file: 7 }, { file: 'relative.penwright' }, { file: join(fake.state.home, 'x'), more: 1 }, { file: null }]) fake.app.emit('second-instance', {}, ['x', 'y.penwright'], '', told);
    await new Promise((done) => setTimeout(done, 50));
    expect(fake.window.webContents.sent).toEqual([]);
    expect(fake.state.boxes).toEqual([]);
  });

  it('that can\'t be opened is told of', async () => {
    const fake = await started();
    fake.app.emit('open-file', fakeEvent(), await file(fake, 'notes.txt'));
    fake.app.emit('open-file', fakeEvent(), join(fake.state.home, 'gone.penwright'));
    await until(() => fake.state.boxes.length > 1);
    expect(fake.state.boxes.map((box) => box.detail)).toEqual([expect.stringContaining('.penwright.json or .penwright'), expect.stringContaining('is not there')]);
  });
});

describe('the menu', () => {
  const items = (fake: Fake) => fake.state.menu.flatMap((menu) => menu.submenu as Electron.MenuItemConstructorOptions[]);

  it('asks the page, once it listens', async () => {
    const fake = await started();
    fake.listen();
    for (const item of items(fake)) (item.click as (() => void) | undefined)?.();
    expect(fake.window.webContents.sent.map(([, asked]) => (asked as { kind: string }).kind)).toEqual(['new', 'open', 'save', 'save-as', 'undo', 'redo']);
  });

  it('has words for every item of its own, and no tools of a developer once packed', async () => {
    const packed = await started(['penwright'], { packed: true });
    const labels = items(packed).filter((item) => item.type !== 'separator').map((item) => item.label);
    expect(labels.every((label) => label !== undefined && label !== '')).toBe(true);
    expect(items(packed).map((item) => item.role)).not.toContain('toggleDevTools');
    expect(items(packed).map((item) => item.role)).not.toContain('reload');
    expect(items(await started()).map((item) => item.role)).toContain('toggleDevTools');
  });
});

describe('the window closes', () => {
  const TELL = channelOf('tellUnsaved');
  const LET = channelOf('letClose');

  it('at once where nothing is unsaved', async () => {
    const fake = await started();
    fake.tell(TELL, true);
    fake.tell(TELL, false);
    fake.window.close();
    expect(fake.window.closed).toBe(true);
  });

  it('with unsaved work only when the page lets it', async () => {
    const fake = await started();
    fake.listen();
    fake.tell(TELL, true);
    // An answer to no question is none.
    fake.tell(LET, true);
    fake.window.close();
    expect(fake.window.closed).toBe(false);
    expect(fake.window.webContents.sent).toEqual([[ASKED_CHANNEL, { kind: 'close' }]]);
    fake.tell(LET, false);
    expect(fake.window.closed).toBe(false);
    fake.window.close();
    expect(fake.window.webContents.sent).toHaveLength(2);
    fake.tell(LET, true);
    expect(fake.window.closed).toBe(true);
  });

  it('past a page that does not answer when a person says so', async () => {
    const fake = await started();
    fake.listen();
    fake.tell(TELL, true);
    fake.window.close();
    fake.window.close();
    await until(() => fake.state.boxes.length > 0);
    await new Promise((done) => setTimeout(done, 10));
    expect(fake.window.closed).toBe(false);
    fake.state.boxAnswer = 1;
    fake.window.close();
    await until(() => fake.window.closed);
    expect(fake.window.closed).toBe(true);
    expect(fake.state.boxes).toHaveLength(2);
  });

  it('or opens again where the page has fallen, with its draft offered', async () => {
    const fake = await started();
    fake.listen();
    const page = fake.window.webContents;
    const ask = (name: (typeof REQUESTS)[number], ...args: unknown[]) => fake.state.handlers.get(channelOf(name))!({ sender: page, senderFrame: page.mainFrame }, ...args);
    await ask('keepDraft', null, 'half');
    expect(await ask('drafts')).toEqual([]);
    fake.tell(TELL, true);
    page.emit('render-process-gone');
    await until(() => fake.window.done.length > 1);
    expect(fake.window.done).toEqual(['load penwright://window/index.html', 'load penwright://window/index.html']);
    expect(await ask('drafts')).toMatchObject([{ text: 'half' }]);
    fake.window.close();
    expect(fake.window.closed).toBe(true);
  });
});

describe('the desk behind the messages', () => {
  it('opens, saves, writes and shows by dialogs alone', async () => {
    const fake = await started();
    const page = fake.window.webContents;
    const ask = (name: (typeof REQUESTS)[number], ...args: unknown[]) => fake.state.handlers.get(channelOf(name))!({ sender: page, senderFrame: page.mainFrame }, ...args);
    expect(await ask('openProject')).toEqual({ ok: true, value: null });
    fake.state.open = [join(fake.state.home, 'new.penwright')];
    expect(await ask('saveProjectAs', 'new', 'text')).toMatchObject({ ok: true, value: { name: 'new.penwright' } });
    const opened = await ask('openProject') as { value: { file: string; text: string } };
    expect(opened.value.text).toBe('text');
    expect(await ask('saveProject', opened.value.file, 'more', false)).toEqual({ ok: true, value: { kind: 'saved' } });
    fake.state.open = [join(fake.state.home, 'out')];
    expect(await ask('choosePackage', 'yard')).toMatchObject({ ok: true, value: { name: 'out' } });
    expect(await ask('print', new TextEncoder().encode('%PDF-1.7'), 'all')).toEqual({ ok: true, value: null });
    expect(fake.state.log.at(-1)).toBe(`open ${join(fake.state.home, 'user', 'print', 'all.pdf')}`);
  });
});

describe('the program\'s own file', () => {
  it('hands Electron over, and says so where it can\'t start', async () => {
    const fake = await fakeElectron();
    homes.push(fake.state.home);
    await rm(join(fake.state.home, 'app'), { recursive: true });
    vi.doMock('electron', () => fake.parts);
    await import('../../electron/main/main.ts');
    await until(() => fake.state.log.includes('exit 1'));
    expect(fake.state.log).toContain('error The window cannot be opened');
    expect(fake.state.log.at(-1)).toBe('exit 1');
  });

  it('puts the desk into the page under its agreed name', async () => {
    const put: [string, object][] = [];
    vi.doMock('electron', () => ({ contextBridge: { exposeInMainWorld: (name: string, desk: object) => { put.push([name, desk]); } }, ipcRenderer: {} }));
    await import('../../electron/preload/preload.ts');
    expect(put.map(([name]) => name)).toEqual(['penwright']);
    expect(Object.keys(put[0]![1])).toContain('saveProject');
  });
});
