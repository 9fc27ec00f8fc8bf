import type { BrowserWindowConstructorOptions } from 'electron';
import { say } from '../../../core/text/index.ts';

/** The one window. The page in it is a stranger to the machine: it has the preload's desk and nothing else. */
export function windowOptions(preload: string, dark: boolean, packed: boolean): BrowserWindowConstructorOptions {
  return {
    title: say('shell.name'),
    width: 1440,
    height: 900,
    // Under this the page has no room for the plan beside what is typed.
    minWidth: 1024,
    minHeight: 640,
    show: false,
    // Paper, or its dark counterpart, until the page has drawn itself.
    backgroundColor: dark ? '#1b1c1e' : '#f6f4ee',
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      // Its dictionaries would be fetched from a server.
      spellcheck: false,
      devTools: !packed,
    },
  };
}
