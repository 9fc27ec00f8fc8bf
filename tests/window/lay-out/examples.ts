import { readdirSync, readFileSync } from 'node:fs';
import { type JsonObject } from '../../../core/brief/json/types.ts';

const folder = new URL('../../../shared/examples/', import.meta.url);

/** The example projects as they lie in the repository. */
export const EXAMPLES: readonly { readonly name: string; readonly json: JsonObject }[] = readdirSync(folder)
  .filter((name) => name.endsWith('.penwright.json'))
  .map((name) => ({ name, json: JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as JsonObject }));
