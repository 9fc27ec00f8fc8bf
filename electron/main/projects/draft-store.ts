import { randomBytes } from 'node:crypto';
import { basename, dirname, join } from 'node:path';
import { z } from 'zod';
import { type Disk, replaceFile, sweep } from '../../disk/index.ts';
import { readJson } from './read-json.ts';

const draftSchema = z.object({
  format: z.literal('penwright-draft'),
  version: z.literal(1),
  /** The project file that it was being written for; null: none yet. */
  file: z.string().nullable(),
  /** Digest of what that file held when the draft was begun. */
  base: z.string().nullable(),
  kept: z.iso.datetime(),
  text: z.string(),
});
const pointerSchema = z.object({ format: z.literal('penwright-draft-place'), version: z.literal(1), place: z.string() });

export type DraftFile = Readonly<z.infer<typeof draftSchema>>;

/** A draft's id and where it stands. */
export interface DraftPlace {
  readonly id: string;
  readonly place: string;
}

/** Where the draft of a project file goes: beside it. */
export const placeBeside = (path: string): string => join(dirname(path), `.${basename(path)}.penwright-draft`);

/**
 * The drafts on the disk. Each has a file of its own in the program's folder, by its id: the draft itself, or only where it
 * stands. That is written first, so that no draft is ever lost sight of. Functions reject with what the system refuses.
 */
export interface DraftStore {
  newId(): string;
  /** Where a draft goes that has no place beside its file. */
  ownPlace(id: string): string;
  write(at: DraftPlace, draft: DraftFile): Promise<void>;
  read(at: DraftPlace): Promise<DraftFile | null>;
  /** Takes a draft away, if it is there. */
  remove(at: DraftPlace): Promise<void>;
  list(): Promise<readonly DraftPlace[]>;
  /** Notes a draft that was found beside a file. */
  adopt(place: string): Promise<DraftPlace>;
}

export function createDraftStore(disk: Disk, folder: string): DraftStore {
  const ownPlace = (id: string): string => join(folder, `${id}.json`);
  const newId = (): string => `draft-${randomBytes(8).toString('hex')}`;
  const put = async (path: string, value: unknown): Promise<void> => {
    if (dirname(path) === folder && (await disk.kindOf(folder)) === null) await disk.makeFolder(folder);
    await replaceFile(disk, path, new TextEncoder().encode(`${JSON.stringify(value, null, 1)}\n`), () => true);
  };
  const point = async ({ id, place }: DraftPlace): Promise<void> => {
    const pointer = await readJson(disk, ownPlace(id), pointerSchema);
    if (pointer?.place !== place) await put(ownPlace(id), { format: 'penwright-draft-place', version: 1, place });
  };
  const drop = async (path: string): Promise<void> => {
    if ((await disk.kindOf(path)) === 'file') await disk.removeFile(path);
    await sweep(disk, path).catch(() => undefined);
  };
  return {
    newId,
    ownPlace,
    write: async (at, draft) => {
      if (at.place !== ownPlace(at.id)) await point(at);
      await put(at.place, draft);
    },
    read: (at) => readJson(disk, at.place, draftSchema),
    remove: async (at) => {
      await drop(at.place);
      await drop(ownPlace(at.id));
    },
    list: async () => {
      const entries = await disk.list(folder).catch(() => []);
      for (const { name } of entries) {
        // A killed run's, of a draft whose id was never used again.
        const begun = /^\.(draft-[0-9a-f]+\.json)\.\d+\.penwright-save$/.exec(name)?.[1];
        if (begun !== undefined) await sweep(disk, join(folder, begun)).catch(() => undefined);
      }
      const ids = entries.flatMap(({ name, kind }) => (kind === 'file' && /^draft-[0-9a-f]+\.json$/.test(name) ? [name.slice(0, -'.json'.length)] : []));
      return Promise.all(ids.map(async (id) => ({ id, place: (await readJson(disk, ownPlace(id), pointerSchema))?.place ?? ownPlace(id) })));
    },
    adopt: async (place) => {
      const at = { id: newId(), place };
      await point(at);
      return at;
    },
  };
}
