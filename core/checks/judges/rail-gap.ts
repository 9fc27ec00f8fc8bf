import { say } from '../../text/index.ts';
import { judged, type Judge, type Outcome } from '../outcome.ts';
import { groupFences } from '../words/fence-groups.ts';
import { printedSmall } from '../words/print.ts';
import { fenceGaps, type FenceGap } from './fence-gaps.ts';

const KINDS = [['under', 'where.gapUnder'], ['rails', 'where.gapRails'], ['skin', 'where.gapSkin']] as const satisfies readonly (readonly [FenceGap['kind'], string])[];

/** In millionths of an inch, so that rounding in doubles does not part what is alike. */
const STEP = 1e6;

/**
 * Only reports, so a person looks: the gap under the lowest rail or skin, the greatest between rails and the greatest beside a skin, fences
 * that are alike in it together. Fences closed from the ground to the top have none.
 */
export const railGap: Judge = ({ brief, layout }) => {
  const gaps = new Map(layout.fences.map((fence) => [fence, fenceGaps(fence)]));
  const found = KINDS.flatMap(([kind, key]): readonly Outcome[] => {
    const most = new Map([...gaps].map(([fence, all]) => [fence, Math.max(0, ...all.filter((gap) => gap.kind === kind).map((gap) => gap.size))]));
    const open = layout.fences.filter((fence) => most.get(fence)! > 0);
    return groupFences(open, (fence) => Math.round(most.get(fence)! * STEP)).map(({ first, names }): Outcome => {
      const size = most.get(first)!;
      return { verdict: 'look', measured: size, where: say(key, { fences: names, gap: printedSmall(brief, size) }), at: null };
    });
  });
  return found.length > 0 ? found : [judged(true, 0, say('where.gapNone'))];
};
