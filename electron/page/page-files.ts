import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** The files of a built page: the path in an address, from `/`, to the path on the disk. */
export type PageFiles = ReadonlyMap<string, string>;

/**
 * All files of a folder, at any depth. Links are left out, so that nothing outside the folder is ever in the list. Throws where the
 * folder can't be read.
 */
export function listPage(folder: string): PageFiles {
  const files = new Map<string, string>();
  const visit = (inside: string): void => {
    for (const entry of readdirSync(join(folder, inside), { withFileTypes: true })) {
      const path = `${inside}/${entry.name}`;
      if (entry.isDirectory()) visit(path);
      else if (entry.isFile()) files.set(path, join(folder, path));
    }
  };
  visit('');
  return files;
}

/**
 * The file that an address's path means, or null. A path is looked up in the list and never put together with a folder, so
 * that no way of writing `..` leads anywhere. `/` is the page itself.
 */
export function pathInPage(files: PageFiles, path: string): string | null {
  let plain: string;
  try {
    plain = decodeURIComponent(path);
  } catch {
    return null;
  }
  return files.get(plain === '/' ? '/index.html' : plain) ?? null;
}
