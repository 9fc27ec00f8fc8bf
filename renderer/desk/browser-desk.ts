/** The window in a browser: projects by file input and download, the package as a zip, drafts in the browser's own storage. */
import { type Desk, type Reply } from '../../electron/bridge/desk.ts';

const nothing = <T,>(value: T): Promise<Reply<T>> => Promise.resolve({ ok: true, value });
const refused = (): Promise<{ readonly ok: false; readonly message: string }> => Promise.resolve({ ok: false, message: '' });

export function browserDesk(): Desk {
  return {
    where: 'browser',
    openProject: () => nothing(null),
    recentProjects: () => Promise.resolve([]),
    openRecent: refused,
    saveProject: refused,
    saveProjectAs: () => nothing(null),
    keepDraft: () => nothing(null),
    dropDraft: () => nothing(null),
    drafts: () => Promise.resolve([]),
    takeDraft: refused,
    throwDraft: () => nothing(null),
    choosePackage: () => nothing(null),
    writePackage: refused,
    showPackage: () => nothing(null),
    print: refused,
    tellUnsaved: () => undefined,
    letClose: () => undefined,
    onAsked: () => () => undefined,
  };
}
