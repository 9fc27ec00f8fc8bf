import { type Finding, type Result } from './types.ts';

/** Findings of one result, in the order of the table. */
export interface FindingGroup {
  readonly result: Result;
  readonly findings: readonly Finding[];
}

const ORDER: readonly Result[] = ['fix', 'look', 'ok'];

/** Findings as a person reads them: what to fix first, then where to look, then what is right; a group without any is left out. */
export function inOrder(findings: readonly Finding[]): readonly FindingGroup[] {
  return ORDER
    .map((result) => ({ result, findings: findings.filter((finding) => finding.result === result) }))
    .filter((group) => group.findings.length > 0);
}
