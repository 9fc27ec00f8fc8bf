import { mkdir, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { type OpenedProject, type Reply } from '../../../electron/bridge/desk.ts';
import { type Disk, nodeDisk } from '../../../electron/disk/index.ts';
import { createProjects, type Projects } from '../../../electron/main/projects/index.ts';

/** A person who chooses what they are told to. */
export interface Person {
  opens: string | null;
  saves: string | null;
  packs: string | null;
  /** What was suggested to them last. */
  suggested: string;
}

export interface TestDesk {
  readonly projects: Projects;
  readonly person: Person;
  /** The program's own folder. */
  readonly own: string;
}

/** The projects of a window whose own folder is `home/own`, with a clock that goes on a minute at each look. */
export async function deskIn(home: string, disk: Disk = nodeDisk): Promise<TestDesk> {
  const own = join(home, 'own');
  await mkdir(own, { recursive: true });
  const person: Person = { opens: null, saves: null, packs: null, suggested: '' };
  let minute = (await readdir(own)).length * 100;
  const projects = createProjects({
    disk,
    own,
    dialogs: {
      openProject: () => Promise.resolve(person.opens),
      saveProject: (suggested) => { person.suggested = suggested; return Promise.resolve(person.saves); },
      packageFolder: () => Promise.resolve(person.packs),
    },
    clock: { now: () => new Date(Date.UTC(2026, 2, 2, 8, (minute += 1))), print: (at) => at.toISOString().slice(11, 16) },
  });
  return { projects, person, own };
}

/** The value of an answer. Throws what was refused. */
export function value<T>(reply: Reply<T>): T {
  if (!reply.ok) throw new Error(reply.message);
  return reply.value;
}

export async function openFile({ projects, person }: TestDesk, path: string): Promise<OpenedProject> {
  person.opens = path;
  const opened = value(await projects.answers.openProject());
  if (opened === null) throw new Error('nothing was chosen');
  return opened;
}
