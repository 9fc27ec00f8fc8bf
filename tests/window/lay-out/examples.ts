import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type JsonObject } from '../../../core/brief/json/types.ts';

// By its folder's name: in a page's surroundings a URL of a file is none that Node reads.
const folder = join(import.meta.dirname, '../../../shared/examples');

/** The example projects as they lie in the repository. */
export const EXAMPLES: readonly { readonly name: string; readonly json: JsonObject }[] = readdirSync(folder)
  .filter((name) => name.endsWith('.penwright.json'))
  .map((name) => ({ name, json: JSON.parse(readFileSync(join(folder, name), 'utf8')) as JsonObject }));
