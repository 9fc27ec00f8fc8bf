import { type Finding } from '../../../core/checks/index.ts';

/** A finding with its place in the list that the design gave, by which it is chosen. */
export interface Numbered {
  readonly finding: Finding;
  readonly index: number;
}

export const numbered = (findings: readonly Finding[]): readonly Numbered[] => findings.map((finding, index) => ({ finding, index }));
