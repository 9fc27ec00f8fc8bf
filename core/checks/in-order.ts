import { DANGERS, dangerOf } from './danger.ts';
import { type Finding, type Result } from './types.ts';

/** Findings of one result, the most dangerous first and within that in the order of the table. */
export interface FindingGroup {
  readonly result: Result;
  readonly findings: readonly Finding[];
}

const ORDER: readonly Result[] = ['fix', 'look', 'ok'];

/**
 * Findings as a person reads them: what to fix first, then where to look, then what is right; in each, what may hurt a person before
 * what may hurt an animal, and so on down. A group without any is left out.
 */
export function inOrder(findings: readonly Finding[]): readonly FindingGroup[] {
  return ORDER
    .map((result) => ({ result, findings: worstFirst(findings.filter((finding) => finding.result === result)) }))
    .filter((group) => group.findings.length > 0);
}

const worstFirst = (findings: readonly Finding[]): readonly Finding[] =>
  DANGERS.flatMap((danger) => findings.filter((finding) => dangerOf(finding.id) === danger));
