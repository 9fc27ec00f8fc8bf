import { join } from 'node:path';
import type * as Electron from 'electron';
import { say } from '../../core/text/index.ts';
import { PAGE_ADDRESS, PAGE_SCHEME } from '../bridge/names.ts';
import { type Disk } from '../disk/index.ts';
import { BUILT_PAGE, BUILT_PRELOAD, listPage } from '../page/index.ts';
import { answerMessages, denyReach, denyWays, isFromPage, type MessageEnd } from './guard/index.ts';
import { createPackages, createPrint } from './packages/index.ts';
import { createProjects, type Projects } from './projects/index.ts';
import { answerFrom, SCHEME_PRIVILEGES } from './scheme.ts';
import { createCloseGuard, createPageAsker, fileInWords, menuTemplate, type PageAsker, pathDialogs, readHanded, windowOptions } from './window/index.ts';

/** The parts of Electron that the shell is made of, so that a test can stand in for them. */
export type ElectronParts = Pick<typeof Electron, 'app' | 'BrowserWindow' | 'dialog' | 'Menu' | 'nativeTheme' | 'protocol' | 'session' | 'shell'> & { readonly ipcMain: MessageEnd };

/** What the shell has of the process that it runs in. */
export interface Started {
  readonly words: readonly string[];
  readonly cwd: string;
  readonly platform: NodeJS.Platform;
}

interface Shell {
  readonly window: Electron.BrowserWindow;
  readonly asker: PageAsker;
  readonly projects: Projects;
}

/** Runs the desktop program: one window, one program however often it is started. Returns once it is ready, or at once where another has the work. */
export async function runShell(parts: ElectronParts, disk: Disk, started: Started): Promise<void> {
  const { app } = parts;
  // Both have to come before the program is ready.
  parts.protocol.registerSchemesAsPrivileged(SCHEME_PRIVILEGES);
  app.enableSandbox();

  const given = fileInWords(started.words, app.isPackaged ? 1 : 2, started.cwd);
  if (!app.requestSingleInstanceLock({ file: given })) {
    app.quit();
    return;
  }
  let shell: Shell | null = null;
  const waiting: string[] = given === null ? [] : [given];
  const handOver = (file: string): void => {
    if (shell === null) waiting.push(file);
    else void openInPage(parts, shell, file);
  };
  app.on('second-instance', (_, __, ___, told) => {
    const { file } = readHanded(told);
    if (file !== null) handOver(file);
    if (shell !== null) show(shell.window);
  });
  app.on('open-file', (event, file) => {
    event.preventDefault();
    handOver(file);
  });
  app.on('window-all-closed', () => { app.quit(); });
  denyWays(app);

  await app.whenReady();
  denyReach(parts.session.defaultSession, app.isPackaged);
  parts.protocol.handle(PAGE_SCHEME, answerFrom(listPage(join(app.getAppPath(), BUILT_PAGE))));
  shell = openWindow(parts, disk, started);
  for (const file of waiting.splice(0)) void openInPage(parts, shell, file);
  await shell.window.loadURL(PAGE_ADDRESS);
}

function openWindow(parts: ElectronParts, disk: Disk, started: Started): Shell {
  const { app, dialog, shell: machine } = parts;
  const own = app.getPath('userData');
  const window = new parts.BrowserWindow(windowOptions(join(app.getAppPath(), BUILT_PRELOAD), parts.nativeTheme.shouldUseDarkColors, app.isPackaged));
  const page = window.webContents;
  const dialogs = pathDialogs(dialog, window);
  const asker = createPageAsker((channel, asked) => { page.send(channel, asked); });
  const guard = createCloseGuard({
    askPage: () => { asker.ask({ kind: 'close' }); },
    askPerson: () => askToClose(dialog, window),
    close: () => { window.close(); },
  });
  const projects = createProjects({ disk, dialogs, own, clock: { now: () => new Date(), print: printTime } });
  const packages = createPackages({
    disk, dialogs,
    reveal: (path) => { machine.showItemInFolder(path); },
    projects: () => projects.files.all().map((file) => file.path),
  });
  const print = createPrint({ disk, folder: join(own, 'print'), open: (path) => machine.openPath(path) });

  answerMessages(parts.ipcMain, (event) => isFromPage(event, page), { ...projects.answers, ...packages, ...print }, {
    notices: { tellUnsaved: guard.tellUnsaved, letClose: guard.letClose },
    listening: asker.listening,
  });
  const gone = (): void => {
    asker.deaf();
    guard.pageGone();
    projects.begin();
  };
  page.on('did-start-navigation', ({ isMainFrame, isSameDocument }) => { if (isMainFrame && !isSameDocument) gone(); });
  page.on('render-process-gone', () => {
    gone();
    void askAfterFall(dialog, window).then((again) => again ? window.loadURL(PAGE_ADDRESS) : window.close());
  });
  window.on('close', (event) => { if (!guard.mayClose()) event.preventDefault(); });
  window.once('ready-to-show', () => { window.show(); });
  parts.Menu.setApplicationMenu(parts.Menu.buildFromTemplate(menuTemplate({ platform: started.platform, packed: app.isPackaged, ask: asker.ask })));
  return { window, asker, projects };
}

/** Opens a file that came from outside the window: the page gets it, or a person is told why not. */
async function openInPage({ dialog }: ElectronParts, { window, asker, projects }: Shell, file: string): Promise<void> {
  const opened = await projects.openPath(file);
  if (opened.ok) asker.ask({ kind: 'opened', project: opened.value });
  else await dialog.showMessageBox(window, { type: 'error', title: say('shell.name'), message: say('shell.dialog.not-opened'), detail: opened.message, buttons: [say('shell.dialog.ok')] });
}

async function askToClose(dialog: ElectronParts['dialog'], window: Electron.BrowserWindow): Promise<boolean> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'warning', title: say('shell.name'), message: say('shell.dialog.not-answering'), detail: say('shell.dialog.not-answering-detail'),
    buttons: [say('shell.dialog.wait'), say('shell.dialog.close-anyway')], defaultId: 0, cancelId: 0,
  });
  return response === 1;
}

async function askAfterFall(dialog: ElectronParts['dialog'], window: Electron.BrowserWindow): Promise<boolean> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'error', title: say('shell.name'), message: say('shell.dialog.fallen'), detail: say('shell.dialog.fallen-detail'),
    buttons: [say('shell.dialog.again'), say('shell.dialog.close')], defaultId: 0, cancelId: 1,
  });
  return response === 0;
}

function show(window: Electron.BrowserWindow): void {
  if (window.isMinimized()) window.restore();
  window.focus();
}

const printTime = (at: Date): string => at.toLocaleString('en-US', { dateStyle: 'medium', timeStyle: 'short' });
