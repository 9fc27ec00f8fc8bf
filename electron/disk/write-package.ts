import { dirname, join } from 'node:path';
import { type PackageFile } from '../../core/package/types.ts';
import { type Disk, errorCode } from './disk.ts';
import { mend, settle } from './mend.ts';
import { recognize, type Standing } from './recognize.ts';
import { Refused } from './refusal.ts';
import { foldersOf } from './tree.ts';
import { withReason } from './with-reason.ts';
import { claim, readJournal, release, type WorkFolder, workFolder, writeJournal } from './work-folder.ts';

export interface PackageToWrite {
  /** Where it goes, every link followed. */
  readonly target: string;
  /** The same as a person gave it. */
  readonly shown: string;
  readonly files: readonly Pick<PackageFile, 'path' | 'bytes'>[];
  /** Throws `Refused` where what stands there may not give way. */
  readonly mayReplace: (standing: Standing) => void;
  /** Ends the work before the swap; after it the new package stands. */
  readonly signal: AbortSignal;
}

/**
 * Puts a package in its place, whole or not at all: built beside it, flushed, and renamed in. Whatever stood there still stands unless
 * the whole of the new one is there. Returns the path of leftovers that could not be taken away, or null.
 * Throws `Refused`, or the signal's reason where it was ended.
 */
export async function writePackage(disk: Disk, order: PackageToWrite): Promise<string | null> {
  const { target, shown } = order;
  return withReason(shown, 'command.out-unwritten', async () => {
    await mend(disk, target, shown);
    const standing = await recognize(disk, target, shown);
    order.mayReplace(standing);
    const work = workFolder(target);
    const parents = await makeParents(disk, dirname(target));
    try {
      await take(disk, work, shown);
    } catch (error) {
      await removeMade(disk, parents);
      throw error;
    }
    try {
      await build(disk, work, order, standing);
      await swap(disk, work, order, standing);
    } catch (error) {
      await undo(disk, work, order, parents);
      throw error;
    } finally {
      release(work);
    }
    return clearUp(disk, work, order);
  });
}

/** Makes the work folder, which only one run can do. */
async function take(disk: Disk, work: WorkFolder, shown: string): Promise<void> {
  try {
    await disk.makeFolder(work.path);
  } catch (error) {
    throw errorCode(error) === 'EEXIST' ? new Refused(shown, 'command.out-raced') : error;
  }
  claim(work);
}

async function build(disk: Disk, work: WorkFolder, order: PackageToWrite, standing: Standing): Promise<void> {
  const paths = order.files.map((file) => file.path);
  await writeJournal(disk, work, paths, standing.kind === 'package' ? standing.files : standing.kind === 'empty' ? [] : null);
  await disk.makeFolder(work.fresh);
  const folders = foldersOf(paths);
  for (const folder of folders) await disk.makeFolder(join(work.fresh, folder));
  for (const file of order.files) {
    order.signal.throwIfAborted();
    await disk.writeNew(join(work.fresh, file.path), file.bytes);
  }
  for (const folder of [...folders].reverse()) await disk.flushFolder(join(work.fresh, folder));
  await disk.flushFolder(work.fresh);
  await disk.flushFolder(work.path);
  order.signal.throwIfAborted();
}

async function swap(disk: Disk, work: WorkFolder, order: PackageToWrite, standing: Standing): Promise<void> {
  const home = dirname(order.target);
  if (standing.kind === 'nothing') {
    if ((await disk.kindOf(order.target)) !== null) throw new Refused(order.shown, 'command.out-changed');
  } else {
    const mode = await disk.modeOf(order.target);
    await disk.rename(order.target, work.old);
    // Out of reach now: what a person put there since it was looked at is found here, and goes back with all the rest.
    const taken = await recognize(disk, work.old, order.shown);
    if (taken.kind !== standing.kind) throw new Refused(order.shown, 'command.out-changed');
    await disk.setMode(work.fresh, mode);
  }
  await disk.flushFolder(home);
  await disk.rename(work.fresh, order.target);
}

/** Makes the folders that lead to the place. Returns those made, outermost first. */
async function makeParents(disk: Disk, folder: string): Promise<readonly string[]> {
  const missing: string[] = [];
  for (let at = folder; (await disk.kindOf(at)) === null; at = dirname(at)) missing.unshift(at);
  const made: string[] = [];
  try {
    for (const path of missing) {
      await disk.makeFolder(path);
      made.push(path);
    }
  } catch (error) {
    await removeMade(disk, made);
    throw error;
  }
  return made;
}

/** Brings back what stood before a failed run. What cannot be undone now is left to the next run, which mends it. */
async function undo(disk: Disk, work: WorkFolder, order: PackageToWrite, parents: readonly string[]): Promise<void> {
  try {
    const journal = await readJournal(disk, work);
    // Another run took ours for a leftover and is at work in its place.
    if (journal !== null && journal.process !== process.pid) return;
    if ((await disk.kindOf(work.path)) !== null) await settle(disk, order.target, order.shown, work, journal);
  } catch {
    // The first error is the one to tell.
    return;
  }
  await removeMade(disk, parents);
}

async function removeMade(disk: Disk, made: readonly string[]): Promise<void> {
  try {
    for (const path of [...made].reverse()) await disk.removeFolder(path);
  } catch {
    // Somebody has begun to use it: it stays.
  }
}

/** Takes the old package away once the new one is known to be on the disk. */
async function clearUp(disk: Disk, work: WorkFolder, order: PackageToWrite): Promise<string | null> {
  try {
    await disk.flushFolder(dirname(order.target));
    await disk.flushFolder(work.path);
    await settle(disk, order.target, order.shown, work, await readJournal(disk, work));
    return null;
  } catch (error) {
    if (errorCode(error) === null && !(error instanceof Refused)) throw error;
    return work.path;
  }
}
