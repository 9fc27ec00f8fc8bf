/** Openings and catwalks that stand on a run, wherever the file says so. */
import { isJsonObject, type Json, type JsonObject } from '../../../../core/brief/json/types.ts';
import { type StationRun } from '../../../../core/schedules/index.ts';
import { parseLength } from '../../../../core/units/index.ts';
import { valueAt } from '../../../project/json-path.ts';

export interface Standing {
  readonly list: 'openings' | 'catwalks';
  readonly index: number;
  readonly item: JsonObject;
}

/** What stands on `run`: said of it by name, or on the chute at a station that lies on it. */
export function standsOn(project: JsonObject, run: StationRun): readonly Standing[] {
  return (['openings', 'catwalks'] as const).flatMap((list) => {
    const items = valueAt(project, list);
    if (!Array.isArray(items)) return [];
    return (items as readonly Json[]).flatMap((item, index) => (isJsonObject(item) && isOn(item, run) ? [{ list, index, item }] : []));
  });
}

function isOn(item: JsonObject, run: StationRun): boolean {
  if (item['run'] === run.run) return true;
  if (item['run'] !== 'chute' || run.from === null) return false;
  const start = run.from;
  const at = figure(item['at']);
  const [from, to] = at === null ? [figure(item['from']) ?? 0, figure(item['to'])] : [at, at];
  return to !== null && from <= start + run.length && to >= start;
}

function figure(value: Json | undefined): number | null {
  return typeof value === 'number' || typeof value === 'string' ? parseLength(value) : null;
}
