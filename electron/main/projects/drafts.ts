import { basename, dirname } from 'node:path';
import { type Draft, type FileId, type OpenedProject } from '../../bridge/desk.ts';
import { type Disk, readProject, Refused, sha256, withReason } from '../../disk/index.ts';
import { createDraftStore, type DraftFile, type DraftPlace, placeBeside } from './draft-store.ts';
import { noteRead, type OpenFile, type OpenFiles } from './open-files.ts';

export interface Drafts {
  /** Keeps unsaved work beside its file, or in the program's own folder where it has none or where that can't be written. */
  keep(file: OpenFile | null, text: string): Promise<void>;
  /** Takes the draft of this window's work away. */
  drop(file: FileId | null): Promise<void>;
  /** Drafts of earlier windows that hold something which their file does not, the newest first. */
  left(): Promise<readonly Draft[]>;
  take(id: string): Promise<{ readonly project: OpenedProject | null; readonly text: string }>;
  throwAway(id: string): Promise<void>;
  /** The page is new: what the one before it wrote is an earlier window's. */
  begin(): void;
  /** Notes what stands beside a file that is opened. */
  look(path: string): Promise<void>;
}

export interface Clock {
  now(): Date;
  /** A moment as a person reads it. */
  print(at: Date): string;
}

/** `folder`: the program's own for drafts. Functions throw `Refused`. */
export function createDrafts(disk: Disk, files: OpenFiles, folder: string, clock: Clock): Drafts {
  const store = createDraftStore(disk, folder);
  /** The drafts that this window writes. */
  const mine = new Map<FileId | null, DraftPlace>();
  const isMine = (id: string): boolean => [...mine.values()].some((at) => at.id === id);
  const others = async (): Promise<readonly DraftPlace[]> => (await store.list()).filter((at) => !isMine(at.id));
  const refuseTo = <T>(action: () => Promise<T>): Promise<T> => withReason(folder, 'shell.draft-unwritten', action);

  /** A draft of an earlier window that nobody has looked at yet gives way to this one's: it goes into the program's own folder. */
  const makeRoom = async (place: string): Promise<void> => {
    const standing = (await others()).find((at) => at.place === place) ?? ((await disk.kindOf(place)) === null ? null : await store.adopt(place));
    if (standing === null) return;
    const draft = await store.read(standing);
    if (draft === null) throw new Refused(place, 'shell.draft-gone');
    await store.write({ id: standing.id, place: store.ownPlace(standing.id) }, draft);
    await disk.removeFile(place);
  };
  const begin = async (file: OpenFile | null): Promise<DraftPlace> => {
    const id = store.newId();
    const own = { id, place: store.ownPlace(id) };
    if (file === null) return own;
    const place = placeBeside(file.path);
    try {
      await makeRoom(place);
      return { id, place };
    } catch {
      return own;
    }
  };
  const find = async (id: string): Promise<DraftPlace & { readonly draft: DraftFile }> => {
    const at = (await others()).find((other) => other.id === id);
    const draft = at === undefined ? null : await store.read(at);
    if (at === undefined || draft === null) throw new Refused(folder, 'shell.draft-gone');
    return { ...at, draft };
  };

  return {
    keep: (file, text) => refuseTo(async () => {
      const key = file?.id ?? null;
      const draft: DraftFile = { format: 'penwright-draft', version: 1, file: file?.path ?? null, base: file?.known ?? null, kept: clock.now().toISOString(), text };
      const at = mine.get(key) ?? await begin(file);
      mine.set(key, at);
      try {
        await store.write(at, draft);
      } catch (error) {
        const own = { id: at.id, place: store.ownPlace(at.id) };
        if (at.place === own.place) throw error;
        mine.set(key, own);
        await store.write(own, draft);
      }
    }),
    drop: (file) => refuseTo(async () => {
      const at = mine.get(file);
      if (at === undefined) return;
      await store.remove(at);
      mine.delete(file);
    }),
    left: async () => {
      const found: { readonly draft: Draft; readonly at: string }[] = [];
      for (const at of await others()) {
        const draft = await store.read(at);
        if (draft === null || await isIdle(disk, draft)) {
          if (draft !== null || await isGone(disk, at.place)) await store.remove(at).catch(() => undefined);
          continue;
        }
        const { file, text, kept } = draft;
        found.push({ draft: { id: at.id, name: file === null ? '' : basename(file), text, kept: clock.print(new Date(kept)) }, at: kept });
      }
      return found.sort((a, b) => (a.at < b.at ? 1 : -1)).map(({ draft }) => draft);
    },
    take: async (id) => {
      const { draft, place } = await find(id);
      const project = draft.file === null ? null : await reopen(disk, files, draft.file, draft.base);
      mine.set(project?.file ?? null, { id, place });
      return { project, text: draft.text };
    },
    throwAway: (id) => refuseTo(async () => store.remove(await find(id))),
    begin: () => { mine.clear(); },
    look: async (path) => {
      const place = placeBeside(path);
      try {
        if ((await disk.kindOf(place)) === 'file' && !(await store.list()).some((at) => at.place === place)) await store.adopt(place);
      } catch {
        // It is a help and no more: the file itself can be opened.
      }
    },
  };
}

/** Whether nothing stands at a path in a folder that does; on a disk that is away it may still be there. */
const isGone = async (disk: Disk, path: string): Promise<boolean> =>
  (await disk.kindOf(path).catch(() => 'other')) === null && (await disk.kindOf(dirname(path)).catch(() => null)) !== null;

/** Whether a draft holds only what its file holds already: it was saved, and the machine stopped before the draft was taken away. */
async function isIdle(disk: Disk, draft: DraftFile): Promise<boolean> {
  if (draft.file === null) return false;
  try {
    return (await readProject(disk, '', draft.file)).text === draft.text;
  } catch {
    return false;
  }
}

/**
 * Opens the file of a draft, or null where it can't be. What somebody else has written there since the draft was begun counts as
 * not known here, so that the first save tells of it.
 */
async function reopen(disk: Disk, files: OpenFiles, path: string, base: string | null): Promise<OpenedProject | null> {
  try {
    const project = await readProject(disk, '', path);
    const file = noteRead(files, project);
    if (base !== null && base !== sha256(project.bytes)) files.update(file.id, { known: base });
    return { file: file.id, name: file.name, text: project.text };
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return null;
  }
}
