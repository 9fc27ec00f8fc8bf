import { type Asked, type Desk } from '../bridge/desk.ts';
import { ASKED_CHANNEL, channelOf, LISTENING_CHANNEL, type NoticeName, type RequestName } from '../bridge/names.ts';

/** What the desk needs of Electron's `ipcRenderer`. */
export interface Wire {
  invoke(channel: string, ...args: unknown[]): Promise<unknown>;
  send(channel: string, ...args: unknown[]): void;
  on(channel: string, listener: (event: unknown, ...args: unknown[]) => void): unknown;
  removeListener(channel: string, listener: (event: unknown, ...args: unknown[]) => void): unknown;
}

/** The desk of the desktop: each of its functions is one message, and nothing else of the wire reaches the page. */
export function makeDesk(wire: Wire): Desk {
  // The main process answers by the same types: its replies are checked there before they are sent.
  const ask = <N extends RequestName>(name: N) =>
    (...args: Parameters<Desk[N]>): ReturnType<Desk[N]> => wire.invoke(channelOf(name), ...args) as ReturnType<Desk[N]>;
  const tell = <N extends NoticeName>(name: N) =>
    (...args: Parameters<Desk[N]>): void => { wire.send(channelOf(name), ...args); };
  return {
    where: 'desktop',
    openProject: ask('openProject'),
    recentProjects: ask('recentProjects'),
    openRecent: ask('openRecent'),
    saveProject: ask('saveProject'),
    saveProjectAs: ask('saveProjectAs'),
    keepDraft: ask('keepDraft'),
    dropDraft: ask('dropDraft'),
    drafts: ask('drafts'),
    takeDraft: ask('takeDraft'),
    throwDraft: ask('throwDraft'),
    choosePackage: ask('choosePackage'),
    writePackage: ask('writePackage'),
    showPackage: ask('showPackage'),
    print: ask('print'),
    tellUnsaved: tell('tellUnsaved'),
    letClose: tell('letClose'),
    onAsked: (listener) => {
      const hear = (_: unknown, asked: unknown): void => { listener(asked as Asked); };
      wire.on(ASKED_CHANNEL, hear);
      wire.send(LISTENING_CHANNEL);
      return () => { wire.removeListener(ASKED_CHANNEL, hear); };
    },
  } satisfies Desk;
}
