import { type ShownFault } from '../../worker/protocol.ts';
import { pathSteps, type Step } from '../../project/json-path.ts';
import { stepsOrNull } from './part-words.ts';

export interface OwnFault extends ShownFault {
  /** It stands at a field that the group has no row for: it can only be taken out. */
  readonly stray: boolean;
}

const startsWith = (steps: readonly Step[], head: readonly Step[]): boolean => head.every((step, index) => steps[index] === step);

/**
 * The faults that a group shows itself: those at the group, and those at a place under it that it has no row for. `rows`: names or
 * positions that have one; null: all that are there.
 */
export function ownFaults(faults: readonly ShownFault[], path: string, rows: readonly Step[] | null): readonly OwnFault[] {
  const here = pathSteps(path);
  return faults.flatMap((fault): OwnFault[] => {
    const steps = stepsOrNull(fault.path);
    if (steps === null) return [];
    if (fault.path === path || (steps.length === here.length && startsWith(steps, here))) return [{ ...fault, stray: false }];
    const next = steps[here.length];
    const stray = startsWith(steps, here) && next !== undefined && rows !== null && !rows.includes(next);
    return stray ? [{ ...fault, stray }] : [];
  });
}

/** Whether anything is wrong at a path or under it. */
export function anyUnder(faults: readonly ShownFault[], path: string): boolean {
  const here = pathSteps(path);
  return faults.some((fault) => {
    const steps = stepsOrNull(fault.path);
    return steps !== null && startsWith(steps, here) && steps.length >= here.length;
  });
}
