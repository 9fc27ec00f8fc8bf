import { isJsonObject, type Json, type JsonObject } from './json/types.ts';
import { type Path } from './path-fault.ts';

function isThere(project: Json, path: Path): boolean {
  let value: Json | undefined = project;
  for (const step of path) value = isJsonObject(value) ? value[String(step)] : undefined;
  return value !== undefined;
}

/** What goes with a fault: a faulty list whole, so that no other entry changes its place; a group whole, where what it needs is missing. */
function toDrop(project: Json, path: Path): Path {
  const entry = path.findIndex((step) => typeof step === 'number');
  const place = entry < 0 ? path : path.slice(0, entry);
  return isThere(project, place) ? place : place.slice(0, -1);
}

function without(value: Json, path: Path): Json {
  const [step, ...rest] = path;
  if (step === undefined || !isJsonObject(value) || !(step in value)) return value;
  const copy = Object.assign(Object.create(null) as Record<string, Json>, value);
  if (rest.length === 0) {
    Reflect.deleteProperty(copy, step);
    return copy;
  }
  copy[step] = without(value[step] ?? null, rest);
  return copy;
}

/** The project without what is faulty in it, so that the rest can still be held against one another. */
export const prune = (project: JsonObject, faulty: readonly Path[]): JsonObject =>
  faulty.map((path) => toDrop(project, path)).reduce<JsonObject>((value, path) => without(value, path) as JsonObject, project);

/** How many fields there are in all, those of groups in groups too. */
export const countFields = (value: Json): number =>
  isJsonObject(value) ? Object.values(value).reduce<number>((count, field) => count + 1 + countFields(field), 0) : 0;
