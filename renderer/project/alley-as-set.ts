import { type JsonObject } from '../../core/brief/json/types.ts';
import { valueAt, withValue } from './json-path.ts';

/** The alley that is taken where a project says none (the format's default). */
const DEFAULT_RUNS = [{ kind: 'straight', length: '20 ft' }] as const;

/** The project with its alley's runs said, so that a part of one can be changed: a default stands whole in the file as soon as a hand is on it. */
export function alleyAsSet(project: JsonObject): JsonObject {
  return Array.isArray(valueAt(project, 'alley.runs')) ? project : withValue(project, 'alley.runs', DEFAULT_RUNS);
}
