/** Runs of the alley and the chute as lists: what a person does with them keeps what stands on each run with its run. */
import { isJsonObject, type Json, type JsonObject } from '../../../../core/brief/json/types.ts';
import { alleyAsSet } from '../../../project/alley-as-set.ts';
import { valueAt, withValue } from '../../../project/json-path.ts';
import { runName, type RunPlace, runPlace } from './run-place.ts';

/** The runs of a part, its default said where the file is silent. */
export function runsOf(project: JsonObject, part: RunPlace['part']): readonly Json[] {
  const runs = valueAt(part === 'alley' ? alleyAsSet(project) : project, `${part}.runs`);
  return Array.isArray(runs) ? (runs as readonly Json[]) : [];
}

/** A new list of runs; each says which of the old ones it is, or null. */
export interface NextRun {
  readonly run: Json;
  readonly was: number | null;
}

/** The project with a part's runs so; openings and catwalks go with their runs, and go where their run goes. */
export function withRuns(project: JsonObject, part: RunPlace['part'], next: readonly NextRun[]): JsonObject {
  const changed = withValue(project, `${part}.runs`, next.map(({ run }) => run));
  const names = new Map(next.flatMap(({ was }, index) => (was === null ? [] : [[runName({ part, index: was }), runName({ part, index })] as const])));
  return ['openings', 'catwalks'].reduce((now, list) => {
    const items = valueAt(now, list);
    if (!Array.isArray(items)) return now;
    const kept = (items as readonly Json[]).flatMap((item) => movedItem(item, part, names));
    return kept.length === items.length && kept.every((item, i) => item === items[i]) ? now : withValue(now, list, kept);
  }, changed);
}

function movedItem(item: Json, part: RunPlace['part'], names: ReadonlyMap<string, string>): readonly Json[] {
  if (!isJsonObject(item) || typeof item['run'] !== 'string' || runPlace(item['run'])?.part !== part) return [item];
  const name = names.get(item['run']);
  if (name === undefined) return [];
  return [name === item['run'] ? item : { ...item, run: name }];
}

const asTheyAre = (runs: readonly Json[]): NextRun[] => runs.map((run, was) => ({ run, was }));

/** A run put in at an index. */
export const addRun = (project: JsonObject, { part, index }: RunPlace, run: Json): JsonObject =>
  withRuns(project, part, asTheyAre(runsOf(project, part)).toSpliced(index, 0, { run, was: null }));

/** The project without a run; the last one of a part stays. */
export function removeRun(project: JsonObject, { part, index }: RunPlace): JsonObject {
  const runs = runsOf(project, part);
  return runs.length <= 1 ? project : withRuns(project, part, asTheyAre(runs).toSpliced(index, 1));
}

/** A run moved among its neighbors, `by` places on or back; as it is where there is no such place. */
export function moveRun(project: JsonObject, { part, index }: RunPlace, by: number): JsonObject {
  const runs = asTheyAre(runsOf(project, part));
  const moved = runs[index];
  if (moved === undefined || runs[index + by] === undefined) return project;
  return withRuns(project, part, runs.toSpliced(index, 1).toSpliced(index + by, 0, moved));
}

/** Another run in a run's place; what stands on it stays. */
export const replaceRun = (project: JsonObject, { part, index }: RunPlace, run: Json): JsonObject =>
  withRuns(project, part, asTheyAre(runsOf(project, part)).with(index, { run, was: index }));
