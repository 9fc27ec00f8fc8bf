import { isJsonObject, type Json, type JsonObject } from './json/types.ts';
import { type Path } from './path-fault.ts';

/** A faulty list is dropped whole, so that no other entry changes its place. */
function toDrop(path: Path): Path {
  const entry = path.findIndex((step) => typeof step === 'number');
  return entry < 0 ? path : path.slice(0, entry);
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
export const prune = (project: JsonObject, faulty: readonly Path[]): Json =>
  faulty.map(toDrop).reduce<Json>((value, path) => without(value, path), project);
