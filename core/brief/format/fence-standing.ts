import { type Json, type JsonObject, isJsonObject } from '../json/types.ts';
import { type Path } from '../path-fault.ts';

export const CROWD_PEN: Path = ['fences', 'crowdPen'];

/** A setting of a fence with the group around it that says it. */
export interface SaidAround {
  readonly scope: Path;
  readonly value: Json;
}

const groupAt = (project: JsonObject, path: Path): Json | undefined =>
  path.reduce<Json | undefined>((value, step) => (isJsonObject(value) ? value[String(step)] : undefined), project);

/** The groups that a fence's group takes from what it does not say itself, the nearest first: a side from its place, a place from the crowd pen. */
export function scopesAround(scope: Path): readonly Path[] {
  if (scope[1] === 'crowdPen') return [];
  return scope.length > 2 ? [scope.slice(0, 2), CROWD_PEN] : [CROWD_PEN];
}

/** What the groups around a fence's group say of one of its settings; null where none does. */
export function saidAround(project: JsonObject, scope: Path, setting: string): SaidAround | null {
  for (const around of scopesAround(scope)) {
    const value = groupAt(project, [...around, setting]);
    if (value !== undefined) return { scope: around, value };
  }
  return null;
}

/** A setting of a fence's group as it holds there: its own, or what is around it says; null where none does. */
export function saidOf(project: JsonObject, scope: Path, setting: string): SaidAround | null {
  const own = groupAt(project, [...scope, setting]);
  return own === undefined ? saidAround(project, scope, setting) : { scope, value: own };
}
