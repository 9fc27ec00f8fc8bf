/** Names of runs, and the places of the file where they are said. */
import { isJsonObject, type Json, type JsonObject } from '../../../core/brief/json/types.ts';
import { valueAt } from '../../project/json-path.ts';

const entries = (project: JsonObject, path: string): readonly Json[] => {
  const value = valueAt(project, path);
  return Array.isArray(value) ? (value as readonly Json[]) : [];
};

const RUN_LISTS: Readonly<Record<string, string>> = { 'alley.runs': 'alley', 'chute.runs': 'chute', sortPens: 'sort', holdingPens: 'hold', 'returnAlley.runs': 'return' };

/** The name of the run that an entry of a list makes, or null: `chute-2` for the second of `chute.runs`, `load-1` for the first loading ramp. */
export function runOfEntry(project: JsonObject, list: string, index: number): string | null {
  const name = RUN_LISTS[list];
  if (name !== undefined) return `${name}-${String(index + 1)}`;
  if (list !== 'ramps') return null;
  const kinds = entries(project, 'ramps').map((ramp) => (isJsonObject(ramp) ? ramp['kind'] : undefined));
  const kind = kinds[index];
  if (kind !== 'load' && kind !== 'unload') return null;
  return `${kind}-${String(kinds.slice(0, index + 1).filter((other) => other === kind).length)}`;
}

/** Where the file says a run: `chute-2` is `chute.runs[1]`. Null for a name that is no run's. */
export function fieldOfRun(project: JsonObject, name: string): string | null {
  const run = name.replace(/-(start|back|end)$/, '');
  const whole: Readonly<Record<string, string>> = { 'crowd-pen': 'crowdPen', junction: 'fences.junction', chute: 'chute.runs', 'squeeze-pad': 'squeezePad', 'pad-shoulder': 'squeezePad', 'sort-shoulder': 'sortPens' };
  if (whole[run] !== undefined) return whole[run];
  const walked = run.replace(/^(sort-\d+)-(in|back|out)$/, '$1');
  for (const list of [...Object.keys(RUN_LISTS), 'ramps']) {
    const count = Math.max(entries(project, list).length, 1);
    const index = Array.from({ length: count }, (_, at) => at).find((at) => runOfEntry(project, list, at) === walked);
    if (index !== undefined) return entries(project, list).length === 0 ? list : `${list}[${String(index)}]`;
  }
  return null;
}

/** Every run that an opening or catwalk may stand on, in walking order. */
export function runNamesOf(project: JsonObject): readonly string[] {
  const of = (list: string, least: number): readonly string[] =>
    Array.from({ length: Math.max(entries(project, list).length, least) }, (_, index) => runOfEntry(project, list, index)).filter((name) => name !== null);
  return [
    ...of('holdingPens', 0).flatMap((name, index) => [name, ...(index === 0 ? [`${name}-start`] : []), `${name}-back`, `${name}-end`]), ...of('alley.runs', 1), 'crowd-pen', 'junction', 'chute', ...of('chute.runs', 0),
    ...(valueAt(project, 'squeezePad') === undefined ? [] : ['squeeze-pad']), ...of('sortPens', 0), ...of('returnAlley.runs', 0), ...of('ramps', 0),
  ];
}
