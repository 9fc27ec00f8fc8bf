/** A project between the text of its file and the data that the window changes. */
import { parseJson } from '../../core/brief/json/parse-json.ts';
import { isJsonObject, type JsonObject } from '../../core/brief/json/types.ts';
import { toFault } from '../../core/brief/path-fault.ts';
import { printFault } from '../../core/brief/index.ts';
import { readEnvelope } from '../../core/brief/versions/read-envelope.ts';

/** The text that a state of the project was read from or written as: as long as it is that state, not a byte of its file moves. */
const texts = new WeakMap<JsonObject, string>();

export type ReadText =
  /** `held`: what the file itself holds; another state than `project` where an older version was brought forward. */
  | { readonly ok: true; readonly project: JsonObject; readonly held: JsonObject }
  /** Each in a line, `PATH: what is wrong, what is allowed`. */
  | { readonly ok: false; readonly faults: readonly string[] };

/** Reads a project's text as far as a window needs it: one whose fields are at fault is a project, one that is no JSON or not of ours is not. */
export function readText(text: string): ReadText {
  const read = parseJson(text);
  const { value } = read;
  if (value === undefined || read.faults.length > 0) return { ok: false, faults: read.faults.map((fault) => printFault(toFault(fault))) };
  const envelope = readEnvelope(value);
  if (!envelope.ok) return { ok: false, faults: envelope.faults.map((fault) => printFault(toFault(fault))) };
  if (!isJsonObject(value)) throw new Error('an envelope that is no object');
  texts.set(value, text.startsWith('\ufeff') ? text.slice(1) : text);
  return { ok: true, project: envelope.project, held: value };
}

/** A project as its file holds it, or would. */
export const textOf = (project: JsonObject): string => texts.get(project) ?? `${JSON.stringify(project, null, 2)}\n`;

/** Whether `textOf` is what stands in a file, and not a text of ours that no file holds yet. */
export const hasOwnText = (project: JsonObject): boolean => texts.has(project);
