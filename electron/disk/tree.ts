import { join } from 'node:path';
import { type Disk } from './disk.ts';

export interface Tree {
  /** Paths from the folder, with `/`, in a fixed order. */
  readonly files: readonly string[];
  /** Folders, each before what it holds. */
  readonly folders: readonly string[];
  /** Links, pipes and the like: never a part of a package. */
  readonly others: readonly string[];
}

/** All that a folder holds, at any depth; links are not followed. */
export async function readTree(disk: Disk, folder: string): Promise<Tree> {
  const files: string[] = [];
  const folders: string[] = [];
  const others: string[] = [];
  const visit = async (inside: string): Promise<void> => {
    for (const entry of await disk.list(join(folder, inside))) {
      const path = inside === '' ? entry.name : `${inside}/${entry.name}`;
      if (entry.kind === 'file') files.push(path);
      else if (entry.kind === 'folder') {
        folders.push(path);
        await visit(path);
      } else others.push(path);
    }
  };
  await visit('');
  return { files, folders, others };
}

/** The folders that a list of files stands in, each once and each before what it holds. */
export function foldersOf(files: readonly string[]): string[] {
  const out = new Set<string>();
  for (const file of files) {
    const parts = file.split('/').slice(0, -1);
    for (let depth = 1; depth <= parts.length; depth += 1) out.add(parts.slice(0, depth).join('/'));
  }
  return [...out];
}

/** The first thing in a tree that a list of files does not account for, or null. */
export function strangerIn(tree: Tree, files: readonly string[]): string | null {
  const known = new Set(files);
  const homes = new Set(foldersOf(files));
  return (
    tree.others[0] ?? tree.files.find((file) => !known.has(file)) ?? tree.folders.find((folder) => !homes.has(folder)) ?? null
  );
}
