import { join } from 'node:path';
import { app, BrowserWindow, nativeTheme, protocol } from 'electron';
import { PAGE_ADDRESS, PAGE_SCHEME } from '../bridge/names.ts';
import { BUILT_PAGE, BUILT_PRELOAD, listPage } from '../page/index.ts';
import { answerFrom, SCHEME_PRIVILEGES } from './scheme.ts';
import { windowOptions } from './window-options.ts';

protocol.registerSchemesAsPrivileged(SCHEME_PRIVILEGES);
app.enableSandbox();

void app.whenReady().then(async () => {
  protocol.handle(PAGE_SCHEME, answerFrom(listPage(join(app.getAppPath(), BUILT_PAGE))));
  const window = new BrowserWindow(windowOptions(join(app.getAppPath(), BUILT_PRELOAD), nativeTheme.shouldUseDarkColors, app.isPackaged));
  window.once('ready-to-show', () => { window.show(); });
  await window.loadURL(PAGE_ADDRESS);
});
