/** Places in a project file, as faults and handles name them: `chute.runs[1].angle`. Edits make a new project and leave the old as it was. */
import { type Json, type JsonObject } from '../../core/brief/json/types.ts';

export type Step = string | number;

/** `chute.runs[1].angle` as steps; a name that is no plain word stands in quotes: `shop.stock["pipe 2 sch 40"][0]`. Throws for a text that is no path. */
export function pathSteps(path: string): Step[] {
  const steps: Step[] = [];
  let rest = path;
  while (rest !== '') {
    const match = /^\.?([A-Za-z_$][\w$]*)|^\[(\d+)\]|^\[("(?:[^"\\]|\\.)*")\]/.exec(rest);
    if (match === null) throw new Error(`not a path: ${path}`);
    const [whole, name, index, quoted] = match;
    steps.push(index !== undefined ? Number(index) : quoted !== undefined ? (JSON.parse(quoted) as string) : (name ?? ''));
    rest = rest.slice(whole.length);
  }
  return steps;
}

/** What stands at a path; undefined where nothing does. */
export function valueAt(project: Json, path: string): Json | undefined {
  let at: Json | undefined = project;
  for (const step of pathSteps(path)) {
    if (typeof at !== 'object' || at === null) return undefined;
    at = (at as Readonly<Record<Step, Json | undefined>>)[step];
  }
  return at;
}

/** The project with `value` at a path; objects and lists on the way that are not there yet are made. undefined takes the field out. */
export function withValue(project: JsonObject, path: string, value: Json | undefined): JsonObject {
  return placed(project, pathSteps(path), value) as JsonObject;
}

function placed(at: Json | undefined, steps: readonly Step[], value: Json | undefined): Json | undefined {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  if (typeof step === 'number') {
    const list: Json[] = Array.isArray(at) ? [...(at as readonly Json[])] : [];
    const inner = placed(list[step], rest, value);
    if (inner === undefined) list.splice(step, 1);
    else list[step] = inner;
    return list;
  }
  const held = typeof at === 'object' && at !== null && !Array.isArray(at) ? (at as JsonObject) : {};
  const inner = placed(held[step], rest, value);
  if (inner === undefined) {
    return Object.fromEntries(Object.entries(held).filter(([name]) => name !== step));
  }
  return { ...held, [step]: inner };
}
