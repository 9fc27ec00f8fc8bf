/**
 * A window that keeps a draft and saves, again and again, until it is killed: `saving-child HOME FROM`. Tells after each that it is done,
 * in one write that nothing holds back: `draft N`, `saved N`.
 */
import { writeSync } from 'node:fs';
import { join } from 'node:path';
import { type FileId } from '../../../electron/bridge/desk.ts';
import { nodeDisk } from '../../../electron/disk/index.ts';
import { createProjects } from '../../../electron/main/projects/index.ts';
import { textOf } from './saved-text.ts';

const [home = '', from = ''] = process.argv.slice(2);
const nobody = (): Promise<null> => Promise.resolve(null);

async function run(): Promise<void> {
  const { answers, openPath } = createProjects({
    disk: nodeDisk,
    own: join(home, 'own'),
    dialogs: { openProject: nobody, saveProject: nobody, packageFolder: nobody },
    clock: { now: () => new Date(), print: String },
  });
  const opened = await openPath(join(home, 'yard.penwright.json'));
  if (!opened.ok) throw new Error(opened.message);
  const { file } = opened.value;
  for (let n = Number(from); ; n += 1) await step(answers, file, n);
}

async function step(answers: ReturnType<typeof createProjects>['answers'], file: FileId, n: number): Promise<void> {
  const kept = await answers.keepDraft(file, textOf(n));
  if (!kept.ok) throw new Error(kept.message);
  writeSync(1, `draft ${String(n)}\n`);
  const saved = await answers.saveProject(file, textOf(n), false);
  if (!saved.ok || saved.value.kind !== 'saved') throw new Error(JSON.stringify(saved).slice(0, 300));
  writeSync(1, `saved ${String(n)}\n`);
}

void run();
