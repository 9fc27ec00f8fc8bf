import { EventEmitter } from 'node:events';
import { mkdir, mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type ElectronParts } from '../../../electron/main/run-shell.ts';
import { type Sent } from '../../../electron/main/guard/sender.ts';

type Answer = (event: Sent, ...args: unknown[]) => Promise<unknown>;

export interface FakeEvent {
  prevented: boolean;
  preventDefault(): void;
}
export const fakeEvent = (): FakeEvent => {
  const event: FakeEvent = { prevented: false, preventDefault: () => { event.prevented = true; } };
  return event;
};

class FakePage extends EventEmitter {
  readonly mainFrame = { url: 'penwright://window/index.html', frameToken: 'main' };
  readonly sent: unknown[][] = [];
  windows: ((details: { url: string }) => { action: string }) | null = null;
  isDestroyed = (): boolean => false;
  send(...words: unknown[]): void { this.sent.push(words); }
  setWindowOpenHandler(handler: (details: { url: string }) => { action: string }): void { this.windows = handler; }
}

export class FakeWindow extends EventEmitter {
  readonly webContents = new FakePage();
  readonly done: string[] = [];
  readonly options: Electron.BrowserWindowConstructorOptions;
  minimized = false;
  closed = false;
  constructor(options: Electron.BrowserWindowConstructorOptions) {
    super();
    this.options = options;
  }
  loadURL(address: string): Promise<void> { this.done.push(`load ${address}`); return Promise.resolve(); }
  show(): void { this.done.push('show'); }
  focus(): void { this.done.push('focus'); }
  restore(): void { this.done.push('restore'); }
  isMinimized(): boolean { return this.minimized; }
  /** As the real one does: the listeners may prevent it. */
  close(): void {
    const event = fakeEvent();
    this.emit('close', event);
    this.closed = !event.prevented;
  }
}

/** The parts of Electron with everything that is done to them written down. */
export async function fakeElectron(options: { readonly first?: boolean; readonly packed?: boolean } = {}) {
  const home = await mkdtemp(join(tmpdir(), 'penwright-'));
  await mkdir(join(home, 'app', '.build', 'window'), { recursive: true });
  await mkdir(join(home, 'user'));
  await writeFile(join(home, 'app', '.build', 'window', 'index.html'), '<!doctype html>');
  const state = {
    home,
    log: [] as string[],
    windows: [] as FakeWindow[],
    handlers: new Map<string, Answer>(),
    hearers: new EventEmitter(),
    schemes: [] as unknown[],
    served: new Map<string, (request: Request) => Promise<Response>>(),
    lock: null as unknown,
    menu: [] as Electron.MenuItemConstructorOptions[],
    boxes: [] as Electron.MessageBoxOptions[],
    boxAnswer: 0,
    open: [] as string[],
    permission: null as ((page: unknown, permission: string, answer: (yes: boolean) => void) => void) | null,
    check: null as (() => boolean) | null,
    device: null as (() => boolean) | null,
    request: null as ((details: { url: string }, answer: (reply: { cancel?: boolean }) => void) => void) | null,
    sessionEvents: new EventEmitter(),
  };
  class Window extends FakeWindow {
    constructor(made: Electron.BrowserWindowConstructorOptions) {
      super(made);
      state.windows.push(this);
      app.emit('web-contents-created', {}, this.webContents);
    }
  }
  const app = Object.assign(new EventEmitter(), {
    isPackaged: options.packed ?? false,
    enableSandbox: () => { state.log.push('sandbox'); },
    requestSingleInstanceLock: (told: unknown) => { state.lock = told; return options.first ?? true; },
    quit: () => { state.log.push('quit'); },
    exit: (code: number) => { state.log.push(`exit ${String(code)}`); },
    whenReady: () => { state.log.push('ready'); return Promise.resolve(); },
    getAppPath: () => join(home, 'app'),
    getPath: () => join(home, 'user'),
  });
  const parts = {
    app,
    BrowserWindow: Window,
    dialog: {
      showOpenDialog: () => Promise.resolve({ canceled: state.open.length === 0, filePaths: state.open }),
      showSaveDialog: () => Promise.resolve({ canceled: state.open.length === 0, filePath: state.open[0] ?? '' }),
      showMessageBox: (_: unknown, box: Electron.MessageBoxOptions) => { state.boxes.push(box); return Promise.resolve({ response: state.boxAnswer }); },
      showErrorBox: (title: string) => { state.log.push(`error ${title}`); },
    },
    ipcMain: {
      handle: (channel: string, answer: Answer) => { state.handlers.set(channel, answer); },
      on: (channel: string, hear: (event: Sent, ...args: unknown[]) => void) => state.hearers.on(channel, hear),
    },
    Menu: {
      buildFromTemplate: (template: Electron.MenuItemConstructorOptions[]) => { state.menu = template; return template; },
      setApplicationMenu: () => { state.log.push('menu'); },
    },
    nativeTheme: { shouldUseDarkColors: true },
    protocol: {
      registerSchemesAsPrivileged: (schemes: unknown[]) => { state.log.push('schemes'); state.schemes = schemes; },
      handle: (scheme: string, answer: (request: Request) => Promise<Response>) => { state.served.set(scheme, answer); },
    },
    session: {
      defaultSession: {
        setPermissionRequestHandler: (handler: typeof state.permission) => { state.permission = handler; },
        setPermissionCheckHandler: (handler: typeof state.check) => { state.check = handler; },
        setDevicePermissionHandler: (handler: typeof state.device) => { state.device = handler; },
        on: (name: string, listener: (...args: unknown[]) => void) => state.sessionEvents.on(name, listener),
        webRequest: { onBeforeRequest: (handler: typeof state.request) => { state.request = handler; } },
      },
    },
    shell: { showItemInFolder: (path: string) => { state.log.push(`reveal ${path}`); }, openPath: (path: string) => { state.log.push(`open ${path}`); return Promise.resolve(''); } },
  };
  return { state, app, parts: parts as unknown as ElectronParts };
}

/** Waits until something holds, for a while. */
export async function until(holds: () => boolean): Promise<void> {
  for (let turn = 0; turn < 500 && !holds(); turn += 1) await new Promise((done) => setTimeout(done, 5));
}
