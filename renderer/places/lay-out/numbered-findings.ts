import { type Finding } from '../../../core/checks/index.ts';

export interface NumberedFinding {
  /** From 1: what has to be fixed first, then what has to be looked at. */
  readonly number: number;
  /** Index in the list of findings. */
  readonly index: number;
  readonly finding: Finding;
}

/** The findings that ask for something, numbered as the board shows them. */
export function numberedFindings(findings: readonly Finding[]): readonly NumberedFinding[] {
  const all = findings.map((finding, index) => ({ finding, index }));
  return [...all.filter(({ finding }) => finding.result === 'fix'), ...all.filter(({ finding }) => finding.result === 'look')]
    .map((one, at) => ({ ...one, number: at + 1 }));
}

/** The run that a finding is about: the first word of its place, where that is one. */
export const runOfFinding = (finding: Finding): string => finding.where.split(/[ ,]/)[0] ?? '';
