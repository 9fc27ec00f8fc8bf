import { useStore } from '../project/store.ts';
import { useDeskWindow } from './desk-window.ts';

export interface Tally {
  readonly faults: number;
  readonly fix: number;
  readonly look: number;
}

/** How much is wrong: faults of the brief, and findings that say Fix or Look. */
export function useTally(): Tally {
  const { worked } = useDeskWindow();
  const { answer } = useStore(worked);
  const count = (result: 'fix' | 'look'): number => answer?.laid?.findings.filter((finding) => finding.result === result).length ?? 0;
  return { faults: answer?.faults.length ?? 0, fix: count('fix'), look: count('look') };
}
