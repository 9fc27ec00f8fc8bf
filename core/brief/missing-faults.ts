import { say } from '../text/index.ts';
import { allowedRange } from './allowed.ts';
import { isJsonObject, type Json, type JsonObject } from './json/types.ts';
import { pathText, type Path, type PathFault } from './path-fault.ts';
import { RANGES, type Range } from './ranges.ts';

const length = (range: Range) => (): string => say('allowed.length', { range: allowedRange(range) });

/** What every project says itself: it has no default. */
const ASKED_FOR: readonly { readonly path: readonly string[]; readonly allowed: () => string }[] = [
  { path: ['title'], allowed: () => say('allowed.text', { range: allowedRange(RANGES.title) }) },
  { path: ['crowdPen', 'radius'], allowed: length(RANGES.radius) },
  { path: ['chute', 'width'], allowed: length(RANGES.chuteWidth) },
  { path: ['chute', 'runs'], allowed: () => say('allowed.list') },
  { path: ['fences', 'crowdPen', 'rail'], allowed: () => say('allowed.section') },
  { path: ['fences', 'crowdPen', 'post'], allowed: () => say('allowed.section') },
];

/** Whether every project says the field at a path (`crowdPen.radius`) itself. */
export const isAskedFor = (path: string): boolean => ASKED_FOR.some((field) => pathText(field.path) === path);

/** Whether a place is empty though what is around it could hold it: where that is no group of fields, that is the fault. */
function isMissing(project: JsonObject, path: Path): boolean {
  let value: Json | undefined = project;
  for (const step of path) {
    if (!isJsonObject(value)) return value === undefined;
    value = value[step];
  }
  return value === undefined;
}

/** A fault for each field that is asked for and is not there. */
export function missingFaults(project: JsonObject): readonly PathFault[] {
  return ASKED_FOR.filter(({ path }) => isMissing(project, path))
    .map(({ path, allowed }) => ({ path, code: 'fault.missing' as const, params: { allowed: allowed() } }));
}
