import type { BrowserWindow, Dialog } from 'electron';
import { say } from '../../../core/text/index.ts';
import { type PathDialogs } from '../answers.ts';
import { ENDINGS } from '../projects/index.ts';

const filters = () => [{ name: say('shell.dialog.projects'), extensions: ENDINGS.map((ending) => ending.slice(1)) }];

/** The machine's own dialogs, over our window. */
export function pathDialogs(dialog: Pick<Dialog, 'showOpenDialog' | 'showSaveDialog'>, window: BrowserWindow): PathDialogs {
  return {
    openProject: async () => {
      const { canceled, filePaths } = await dialog.showOpenDialog(window, { title: say('shell.dialog.open'), properties: ['openFile'], filters: filters() });
      return canceled ? null : filePaths[0] ?? null;
    },
    saveProject: async (suggested) => {
      const { canceled, filePath } = await dialog.showSaveDialog(window, {
        title: say('shell.dialog.save-as'), defaultPath: suggested, filters: filters(), properties: ['createDirectory', 'showOverwriteConfirmation'],
      });
      return canceled || filePath === '' ? null : filePath;
    },
    packageFolder: async () => {
      const { canceled, filePaths } = await dialog.showOpenDialog(window, {
        title: say('shell.dialog.package'), buttonLabel: say('shell.dialog.package-button'), properties: ['openDirectory', 'createDirectory', 'promptToCreate'],
      });
      return canceled ? null : filePaths[0] ?? null;
    },
  };
}
