import { randomBytes } from 'node:crypto';
import { basename, join } from 'node:path';
import { MANIFEST_PATH } from '../../../core/package/manifest.ts';
import { type FolderId } from '../../bridge/desk.ts';
import { type Disk, liesIn, packagePlace, Refused, refuseLesser, withReason, writePackage } from '../../disk/index.ts';
import { type Answers, type PathDialogs } from '../answers.ts';
import { inTurn } from '../in-turn.ts';
import { fileName } from '../projects/file-name.ts';
import { reply } from '../reply.ts';
import { packageFiles } from './package-files.ts';

export interface PackagesNeed {
  readonly disk: Disk;
  readonly dialogs: PathDialogs;
  /** Shows a file in the machine's own file window. */
  readonly reveal: (path: string) => void;
  /** Paths of the projects that are open: a package is never put where one of them lies. */
  readonly projects: () => readonly string[];
}

/** Folders chosen, packages written and shown. */
export function createPackages({ disk, dialogs, reveal, projects }: PackagesNeed): Pick<Answers, 'choosePackage' | 'writePackage' | 'showPackage'> {
  const folders = new Map<FolderId, string>();
  const turn = inTurn();
  const find = (id: FolderId): string => {
    const path = folders.get(id);
    if (path === undefined) throw new Error(`no chosen folder ${id}`);
    return path;
  };
  return {
    choosePackage: async (suggested) => {
      const chosen = await dialogs.packageFolder();
      if (chosen === null) return { ok: true, value: null };
      return reply(async () => {
        const path = await withReason(chosen, 'command.out-unwritten', () => packageIn(disk, chosen, fileName(suggested)));
        const folder = `folder-${randomBytes(8).toString('hex')}` as FolderId;
        folders.set(folder, path);
        return { folder, name: basename(path) };
      });
    },
    writePackage: (id, handed, kinds) => turn(() => reply(async () => {
      const path = find(id);
      const files = packageFiles(handed, kinds, path);
      const target = await withReason(path, 'command.out-unwritten', () => packagePlace(disk, '', path));
      const project = projects().find((one) => liesIn(one, target));
      if (project !== undefined) throw new Refused(path, 'command.project-in-out', { project });
      await writePackage(disk, {
        target,
        shown: path,
        files,
        mayReplace: (standing) => { refuseLesser(standing, kinds, path); },
        signal: new AbortController().signal,
      });
      return null;
    })),
    showPackage: (id) => reply(async () => {
      const path = find(id);
      const manifest = join(path, MANIFEST_PATH);
      if ((await disk.kindOf(manifest).catch(() => null)) !== 'file') throw new Refused(path, 'shell.package-none');
      // Shown and not opened: whatever a folder is called, nothing in it is run.
      reveal(manifest);
      return null;
    }),
  };
}

/**
 * Where the package goes: the chosen folder itself where it is empty or holds a package, else a new one in it by the name that is suggested,
 * so that a person who chooses the folder of all their work does not fill it.
 */
async function packageIn(disk: Disk, chosen: string, suggested: string): Promise<string> {
  if ((await disk.kindOf(chosen)) === null) return chosen;
  const names = (await disk.list(await disk.realPath(chosen))).map((entry) => entry.name);
  return names.length === 0 || names.includes(MANIFEST_PATH) ? chosen : join(chosen, suggested);
}
