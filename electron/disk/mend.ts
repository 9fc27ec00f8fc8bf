import { join } from 'node:path';
import { type Disk } from './disk.ts';
import { Refused } from './refusal.ts';
import { readTree, strangerIn } from './tree.ts';
import { isFilling, isRunning, type Journal, readJournal, type WorkFolder, workFolder } from './work-folder.ts';

/**
 * Mends what a killed run left beside the place of a package: puts the old package back where the swap was not finished,
 * and takes the leftovers away. Only files that the journal names are removed. Throws `Refused` where another run is
 * at work, or where something that is not ours stands in the way.
 */
export async function mend(disk: Disk, target: string, shown: string): Promise<void> {
  const work = workFolder(target);
  if (isFilling(work)) throw new Refused(shown, 'command.out-in-use', { process: process.pid });
  const kind = await disk.kindOf(work.path);
  if (kind === null) return;
  const entries = kind === 'folder' ? (await disk.list(work.path)).map((entry) => `${entry.kind} ${entry.name}`) : null;
  const ours = new Set(['file journal.json', 'file journal.part', 'folder new', 'folder old']);
  if (entries === null || !entries.every((entry) => ours.has(entry))) throw new Refused(work.path, 'command.work-foreign');
  const journal = await readJournal(disk, work);
  if (journal === null && !entries.every((entry) => entry === 'file journal.part')) throw new Refused(work.path, 'command.work-foreign');
  if (journal !== null && isRunning(journal)) throw new Refused(shown, 'command.out-in-use', { process: journal.process });
  await settle(disk, target, shown, work, journal);
}

/**
 * Ends a swap one way or the other. Where the old package has been taken away and the new one not yet put in its place, the old
 * one goes back; otherwise what stands in the place stays.
 */
export async function settle(disk: Disk, target: string, shown: string, work: WorkFolder, journal: Journal | null): Promise<void> {
  const hasOld = (await disk.kindOf(work.old)) !== null;
  const hasFresh = (await disk.kindOf(work.fresh)) !== null;
  if (hasOld && hasFresh) await putBack(disk, target, shown, work);
  else if (hasOld) await removeKnown(disk, work.old, journal?.old ?? []);
  if (hasFresh) await removeKnown(disk, work.fresh, journal?.fresh ?? []);
  for (const path of [work.journalPart, work.journal]) {
    if ((await disk.kindOf(path)) !== null) await disk.removeFile(path);
  }
  await disk.removeFolder(work.path);
}

async function putBack(disk: Disk, target: string, shown: string, work: WorkFolder): Promise<void> {
  const there = await disk.kindOf(target);
  if (there !== null) {
    // Somebody has put something here since: only an empty folder may give way.
    if (there !== 'folder' || (await disk.list(target)).length > 0) throw new Refused(shown, 'command.out-taken', { folder: work.old });
    await disk.removeFolder(target);
  }
  await disk.rename(work.old, target);
  await disk.flushFolder(work.path);
  await disk.flushFolder(join(target, '..'));
}

/** Removes a folder of ours, but nothing that the list does not name. Throws `Refused`, with all in place, where it holds anything else. */
async function removeKnown(disk: Disk, folder: string, files: readonly string[]): Promise<void> {
  const tree = await readTree(disk, folder);
  const stranger = strangerIn(tree, files);
  if (stranger !== null) throw new Refused(join(folder, stranger), 'command.work-stranger');
  for (const file of tree.files) await disk.removeFile(join(folder, file));
  for (const inner of [...tree.folders].reverse()) await disk.removeFolder(join(folder, inner));
  await disk.removeFolder(folder);
}
