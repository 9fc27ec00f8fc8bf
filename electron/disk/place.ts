import { dirname, join, relative, resolve, sep, basename } from 'node:path';
import { type Disk } from './disk.ts';
import { Refused } from './refusal.ts';

/** Where a package goes: the folder itself, links followed, so that a link stays a link. Throws `Refused` for a link to nothing. */
export async function packagePlace(disk: Disk, cwd: string, out: string): Promise<string> {
  const path = resolve(cwd, out);
  if ((await disk.kindOf(path)) !== null) {
    try {
      return await disk.realPath(path);
    } catch {
      throw new Refused(out, 'command.out-dangling');
    }
  }
  // What stands of the way to it may be a link as well.
  const missing: string[] = [];
  let at = path;
  while ((await disk.kindOf(at)) === null && dirname(at) !== at) {
    missing.unshift(basename(at));
    at = dirname(at);
  }
  const home = await disk.realPath(at).catch(() => {
    throw new Refused(out, 'command.out-dangling');
  });
  if ((await disk.kindOf(home)) !== 'folder') throw new Refused(out, 'command.out-parent');
  return join(home, ...missing);
}

/** Whether a path is a folder or lies in it. Both with links followed. */
export function liesIn(path: string, folder: string): boolean {
  const way = relative(folder, path);
  return way === '' || (way !== '..' && !way.startsWith(`..${sep}`) && resolve(folder, way) === path);
}
