import { type Asked, type Desk, type Draft, type FileId, type Reply } from '../../../electron/bridge/desk.ts';

export interface FakeDesk extends Desk {
  /** What stands in each file. */
  readonly files: Map<string, string>;
  readonly drafted: Map<string, string>;
  /** What was asked, in order. */
  readonly calls: string[];
  /** File that the next dialog chooses; null: shut without choosing. */
  chosen: string | null;
  /** Words with which the next write is refused; null: it goes well. */
  refusal: string | null;
  ask(asked: Asked): void;
}

const id = (name: string): FileId => name as FileId;
const good = <T,>(value: T): Promise<Reply<T>> => Promise.resolve({ ok: true, value });

/** A machine of maps: it notices a file that was changed by somebody else as a real one does. */
export function fakeDesk(files: Readonly<Record<string, string>> = {}, left: readonly Draft[] = []): FakeDesk {
  const known = new Map<string, string>();
  const listeners = new Set<(asked: Asked) => void>();
  const refused = <T,>(message: string): Promise<Reply<T>> => Promise.resolve({ ok: false, message });
  const desk: FakeDesk = {
    where: 'desktop',
    files: new Map(Object.entries(files)),
    drafted: new Map(),
    calls: [],
    chosen: null,
    refusal: null,
    ask: (asked) => { for (const listener of listeners) listener(asked); },
    openProject: () => {
      const { chosen } = desk;
      if (chosen === null) return good(null);
      const text = desk.files.get(chosen) ?? '';
      known.set(chosen, text);
      return good({ file: id(chosen), name: chosen, text });
    },
    recentProjects: () => Promise.resolve([...desk.files.keys()].map((name) => ({ id: name, name, folder: 'yards' }))),
    openRecent: (name) => {
      const text = desk.files.get(name) ?? '';
      known.set(name, text);
      return good({ file: id(name), name, text });
    },
    saveProject: (file, text, force) => {
      desk.calls.push(`save ${file}${force ? ' over' : ''}`);
      if (desk.refusal !== null) return refused(desk.refusal);
      const now = desk.files.get(file) ?? '';
      if (!force && now !== known.get(file)) return good({ kind: 'changed', text: now });
      desk.files.set(file, text);
      known.set(file, text);
      return good({ kind: 'saved' });
    },
    saveProjectAs: (suggested, text) => {
      desk.calls.push(`save-as ${suggested}`);
      const { chosen } = desk;
      if (chosen === null) return good(null);
      desk.files.set(chosen, text);
      known.set(chosen, text);
      return good({ file: id(chosen), name: chosen });
    },
    keepDraft: (file, text) => {
      desk.calls.push(`keep ${file ?? '-'}`);
      desk.drafted.set(file ?? '-', text);
      return good(null);
    },
    dropDraft: (file) => {
      desk.calls.push(`drop ${file ?? '-'}`);
      desk.drafted.delete(file ?? '-');
      return good(null);
    },
    drafts: () => Promise.resolve(left),
    takeDraft: (draft) => {
      const found = left.find((one) => one.id === draft);
      if (found === undefined) return refused('gone');
      const text = desk.files.get(found.name);
      if (text !== undefined) known.set(found.name, text);
      return good({ project: text === undefined ? null : { file: id(found.name), name: found.name, text }, text: found.text });
    },
    throwDraft: (draft) => {
      desk.calls.push(`throw ${draft}`);
      return good(null);
    },
    choosePackage: () => good(null),
    writePackage: () => good(null),
    showPackage: () => good(null),
    print: () => good(null),
    tellUnsaved: (unsaved) => { desk.calls.push(`unsaved ${String(unsaved)}`); },
    letClose: (close) => { desk.calls.push(`close ${String(close)}`); },
    onAsked: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
  return desk;
}
