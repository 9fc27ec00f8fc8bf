import { app, BrowserWindow, dialog, ipcMain, Menu, nativeTheme, protocol, session, shell } from 'electron';
import { say } from '../../core/text/index.ts';
import { nodeDisk } from '../disk/index.ts';
import { runShell } from './run-shell.ts';

runShell({ app, BrowserWindow, dialog, ipcMain, Menu, nativeTheme, protocol, session, shell }, nodeDisk, {
  words: process.argv,
  cwd: process.cwd(),
  platform: process.platform,
}).catch((error: unknown) => {
  dialog.showErrorBox(say('shell.dialog.not-started'), error instanceof Error ? (error.stack ?? error.message) : String(error));
  app.exit(1);
});
