import { fieldOfRule, type Finding, namedRuns } from '../../core/checks/index.ts';
import { type JsonObject } from '../../core/brief/json/types.ts';
import { entryOfFinding } from './finding-words.ts';
import { fieldOfRun } from './form/run-names.ts';

/**
 * The place of the project file that a finding leads to: the entry that it names, else the run that it names where that is of the part
 * its rule is about, else the field that sets what the rule measures. null: no field is plain.
 */
export function fieldOfFinding(finding: Finding, project: JsonObject, runs: readonly string[]): string | null {
  const entry = entryOfFinding(finding);
  if (entry !== null) return entry;
  const rule = fieldOfRule(finding.id);
  const [run] = namedRuns(finding.where, runs);
  const place = run === undefined ? null : fieldOfRun(project, run);
  if (rule === null) return place;
  return place !== null && place.startsWith(`${rule}[`) ? place : rule;
}
