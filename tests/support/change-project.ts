/** Whole project files changed at one place, for tests of the door. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

type Group = Record<string, unknown>;
export type Change = readonly [path: string, value: unknown];

/** The project contract's example, as it was agreed for version 1. A copy of its own for each caller. */
export const frozenText = (): string => readFileSync(join(import.meta.dirname, '../brief/frozen/v1.penwright.json'), 'utf8');
export const sampleProject = (): Group => JSON.parse(frozenText()) as Group;

/** The least that a project says. */
export const leastProject = (): Group => ({
  format: 'penwright-project', version: 1, title: 'Least', crowdPen: { radius: 144 }, chute: { width: 28, runs: [{ kind: 'straight', length: 120 }] },
  fences: { crowdPen: { rail: 'pipe 2 sch 40', post: 'pipe 2 1/2 sch 40' } },
});

const stepsOf = (path: string): readonly string[] => path.split(/[.[\]]+/).filter((step) => step !== '');

/** Puts a value at a place (`chute.runs[1].angle`), making the groups on the way; undefined takes the field away. Changes `project`. */
export function put(project: Group, [path, value]: Change): Group {
  const steps = stepsOf(path);
  let group = project;
  for (const step of steps.slice(0, -1)) {
    group[step] ??= {};
    group = group[step] as Group;
  }
  const last = steps.at(-1) ?? '';
  if (value === undefined) Reflect.deleteProperty(group, last);
  else group[last] = value;
  return project;
}

export const changed = (project: Group, ...changes: readonly Change[]): string => JSON.stringify(changes.reduce(put, project));
