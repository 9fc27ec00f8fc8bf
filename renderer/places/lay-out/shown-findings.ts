import { type Finding, inOrder, namedRuns } from '../../../core/checks/index.ts';
import { say, type StringKey } from '../../../core/text/index.ts';

export interface ShownFinding {
  readonly finding: Finding;
  /** Index in the list of findings. */
  readonly index: number;
  /** Of its dot on the board, from 1; null: it has no place. */
  readonly number: number | null;
}

/** The findings that ask for something, what to fix first before the others; those that have a place numbered as the board shows them. */
export function shownFindings(findings: readonly Finding[]): readonly ShownFinding[] {
  const asking = inOrder(findings).flatMap((group) => (group.result === 'ok' ? [] : group.findings));
  const index = new Map(findings.map((finding, at) => [finding, at]));
  const shown: ShownFinding[] = [];
  let number = 0;
  for (const finding of asking) {
    if (finding.at !== null) number += 1;
    shown.push({ finding, index: index.get(finding) ?? -1, number: finding.at === null ? null : number });
  }
  return shown;
}

/** `Fix 3: Crowd pen radius to the face`. */
export function findingTitle({ finding, number }: ShownFinding): string {
  const params = { result: say(`result.${finding.result}`), rule: say(`rule.${finding.id}` as StringKey) };
  return number === null ? say('place-lay-out.finding', params) : say('place-lay-out.finding-numbered', { ...params, number });
}

/** The first run that a finding names, of those that there are. */
export const runOfFinding = (finding: Finding, runs: readonly string[]): string | null => namedRuns(finding.where, runs)[0] ?? null;
