/** A finding as a person reads it in the window: places by the names that the form gives them, limits that are a word alone as a sentence. */
import { fieldAt, labelOf } from '../../core/brief/format/index.ts';
import { type Finding, printFigures } from '../../core/checks/index.ts';
import { isStringKey, say } from '../../core/text/index.ts';
import { pathSteps } from '../project/json-path.ts';
import { type Units } from '../worker/protocol.ts';

/** Entries of the project file's lists, as a finding names them: `openings[3]`. */
const ENTRY = /\b(openings|catwalks|ramps|sortPens|holdingPens)\[(\d+)\]/g;

/** The first entry of a list that a finding names, as a path of the project file; null: it names none. */
export const entryOfFinding = (finding: Finding): string | null => finding.where.match(ENTRY)?.[0] ?? null;

/** What the form calls a place of the project file; an entry of a list with its number. */
export function fieldName(path: string): string {
  const steps = pathSteps(path);
  const field = fieldAt(steps);
  const last = steps.at(-1);
  if (field === null) return path;
  return typeof last === 'number' ? say('place-brief.entry', { field: labelOf(field), number: last + 1 }) : labelOf(field);
}

/** Where it is: `Opening 4 opens into …` for what the file calls `openings[3]`. */
export const whereWords = ({ where }: Pick<Finding, 'where'>): string => where.replace(ENTRY, (path) => fieldName(path));

/** Its limit: a figure with its unit, or what a limit without a figure asks, in words. */
export function limitWords(finding: Finding, units: Units): string {
  const { limit } = printFigures(finding, units);
  const key = `place-check.limit-word.${limit}`;
  return isStringKey(key) ? say(key) : say('place-check.limit-of', { limit });
}

/** What was measured against its limit: `2 in, limit >= 4 in`. */
export function figuresWords(finding: Finding, units: Units): string {
  const { measured } = printFigures(finding, units);
  const limit = limitWords(finding, units);
  return measured === null ? limit : say('place-check.against', { measured, limit });
}
