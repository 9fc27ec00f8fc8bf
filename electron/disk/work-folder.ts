import { readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { z } from 'zod';
import { type Disk } from './disk.ts';
import { processRuns } from './process-runs.ts';

/**
 * Beside the place of a package stands, while it is being written, a folder of our own: in it the new package as it is built, the old
 * one once it is taken away, and a journal that says which files of the two are ours. Its making is the lock
 * against a second run; whatever a killed run leaves is in it.
 */
export interface WorkFolder {
  readonly path: string;
  readonly journal: string;
  /** The journal before it is whole. */
  readonly journalPart: string;
  /** The new package. */
  readonly fresh: string;
  /** What stood before. */
  readonly old: string;
}

export function workFolder(target: string): WorkFolder {
  const path = join(dirname(target), `.${basename(target)}.penwright-work`);
  return { path, journal: join(path, 'journal.json'), journalPart: join(path, 'journal.part'), fresh: join(path, 'new'), old: join(path, 'old') };
}

const journalSchema = z.object({
  format: z.literal('penwright-swap'),
  version: z.literal(1),
  process: z.int(),
  started: z.string(),
  fresh: z.array(z.string()),
  old: z.array(z.string()).nullable(),
});

/** Who swaps, and what: the files of the new package, and those of the folder that stood before (null: none stood). */
export type Journal = Readonly<z.infer<typeof journalSchema>>;

/** Writes the journal so that it is there whole or not at all. */
export async function writeJournal(disk: Disk, work: WorkFolder, fresh: readonly string[], old: readonly string[] | null): Promise<void> {
  const journal: Journal = {
    format: 'penwright-swap',
    version: 1,
    process: process.pid,
    started: startOf(process.pid),
    fresh: [...fresh],
    old: old === null ? null : [...old],
  };
  await disk.writeNew(work.journalPart, new TextEncoder().encode(JSON.stringify(journal)));
  await disk.rename(work.journalPart, work.journal);
  await disk.flushFolder(work.path);
}

/** The journal in a work folder, or null where it has none of ours. */
export async function readJournal(disk: Disk, work: WorkFolder): Promise<Journal | null> {
  if ((await disk.kindOf(work.journal)) !== 'file') return null;
  try {
    const result = journalSchema.safeParse(JSON.parse(new TextDecoder().decode(await disk.read(work.journal))), { jitless: true });
    return result.success ? result.data : null;
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}

/** The work folders that this process is filling now. */
const filling = new Set<string>();
export const claim = (work: WorkFolder): void => void filling.add(work.path);
export const release = (work: WorkFolder): void => void filling.delete(work.path);
export const isFilling = (work: WorkFolder): boolean => filling.has(work.path);

/** Whether another process that wrote a journal still goes on. A process number that was given again is told by the process's start. */
export function isRunning(journal: Journal): boolean {
  if (journal.process === process.pid) return false;
  return processRuns(journal.process) && startOf(journal.process) === journal.started;
}

/** When a process was started, in the system's own ticks, or empty where the system does not tell. */
function startOf(pid: number): string {
  try {
    const stat = readFileSync(`/proc/${String(pid)}/stat`, 'latin1');
    // The name in brackets may itself hold spaces and brackets: the fields after it are counted from its last bracket.
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? '';
  } catch {
    return '';
  }
}
