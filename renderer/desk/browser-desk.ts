/** The window in a browser: projects by file input and download, the package as a zip, drafts in the browser's own storage. */
import { say } from '../../core/text/index.ts';
import { type Desk, type FolderId } from '../../electron/bridge/desk.ts';
import { browserDrafts } from './browser-drafts.ts';
import { browserFiles } from './browser-files.ts';
import { openDatabase } from './database.ts';
import { download } from './download.ts';
import { zipPackage } from './zip-package.ts';

export function browserDesk(): Desk {
  const database = openDatabase();
  const files = browserFiles(database);
  const targets = new Map<FolderId, string>();
  let unsaved = false;
  window.addEventListener('beforeunload', (event) => {
    if (unsaved) event.preventDefault();
  });
  // A file that is let fall on the page would take the page's place.
  for (const kind of ['dragover', 'drop'] as const) window.addEventListener(kind, (event) => { event.preventDefault(); });
  return {
    where: 'browser',
    openProject: files.openProject,
    recentProjects: files.recentProjects,
    openRecent: files.openRecent,
    saveProject: files.saveProject,
    saveProjectAs: files.saveProjectAs,
    ...browserDrafts(database, files),
    choosePackage: (suggestedName) => {
      const folder = `folder-${String(targets.size + 1)}` as FolderId;
      const name = `${suggestedName}.zip`;
      targets.set(folder, name);
      return Promise.resolve({ ok: true, value: { folder, name } });
    },
    writePackage: async (folder, handed) => {
      const name = targets.get(folder);
      if (name === undefined) throw new Error(`no such place: ${folder}`);
      download(await zipPackage(handed), name, 'application/zip');
      return { ok: true, value: null };
    },
    showPackage: () => Promise.resolve({ ok: true, value: null }),
    print: (pdf, name) => {
      const address = URL.createObjectURL(new Blob([new Uint8Array(pdf)], { type: 'application/pdf' }));
      const page = window.open(address, '_blank');
      return Promise.resolve(page === null ? { ok: false, message: say('browser-desk.print-shut', { name }) } : { ok: true, value: null });
    },
    tellUnsaved: (now) => { unsaved = now; },
    letClose: () => undefined,
    onAsked: () => () => undefined,
  };
}
