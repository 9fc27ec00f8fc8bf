import { basename, dirname } from 'node:path';
import { z } from 'zod';
import { type RecentProject } from '../../bridge/desk.ts';
import { type Disk, replaceFile, sha256 } from '../../disk/index.ts';
import { readJson } from './read-json.ts';

const MOST = 12;
const listSchema = z.object({ format: z.literal('penwright-recent'), version: z.literal(1), paths: z.array(z.string()) });

/** The projects that were opened or saved last, newest first. */
export interface Recent {
  /** Those that are there. One that is gone from a folder that still stands is forgotten; a disk that is away is waited for. */
  list(): Promise<readonly RecentProject[]>;
  /** Puts a file first. */
  add(path: string): Promise<void>;
  /** The path behind an id, or null. */
  find(id: string): Promise<string | null>;
}

const idOf = (path: string): string => `recent-${sha256(new TextEncoder().encode(path)).slice(0, 32)}`;

/** The list is kept in a file of the program's own; a list that can't be read is an empty one, and one that can't be written is let be. */
export function createRecent(disk: Disk, place: string): Recent {
  const read = async (): Promise<readonly string[]> => (await readJson(disk, place, listSchema))?.paths ?? [];
  const keep = async (paths: readonly string[]): Promise<void> => {
    const bytes = new TextEncoder().encode(JSON.stringify({ format: 'penwright-recent', version: 1, paths: paths.slice(0, MOST) }));
    await replaceFile(disk, place, bytes, () => true).catch(() => false);
  };
  const stands = async (path: string): Promise<boolean> => (await disk.kindOf(path).catch(() => null)) !== null;
  return {
    list: async () => {
      const there: string[] = [];
      const kept: string[] = [];
      const paths = await read();
      for (const path of paths) {
        const here = await stands(path);
        if (here) there.push(path);
        if (here || !(await stands(dirname(path)))) kept.push(path);
      }
      if (kept.length < paths.length) await keep(kept);
      return there.map((path) => ({ id: idOf(path), name: basename(path), folder: dirname(path) }));
    },
    add: async (path) => keep([path, ...(await read()).filter((other) => other !== path)]),
    find: async (id) => (await read()).find((path) => idOf(path) === id) ?? null,
  };
}
