import { type JsonObject } from '../../../core/brief/json/types.ts';

/** A table with one name changed, in its place. Throws where the new name is another's already: its entry would be lost. */
export function renamed(table: JsonObject, from: string, to: string): JsonObject {
  if (to !== from && Object.hasOwn(table, to)) throw new Error(`two of ${to}`);
  return Object.fromEntries(Object.entries(table).map(([name, value]) => [name === from ? to : name, value]));
}
