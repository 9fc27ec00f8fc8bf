import { say } from '../../text/index.ts';
import { judged, type Judge, type Outcome } from '../outcome.ts';
import { groupFences } from '../words/fence-groups.ts';
import { printedSmall } from '../words/print.ts';
import { fenceGaps } from './fence-gaps.ts';

/**
 * Only reports, so a person looks: for each build of fence the gap under its lowest rail or skin, the greatest between rails, and
 * the greatest beside a skin. A fence closed from the ground to its top has none.
 */
export const railGap: Judge = ({ brief, layout }) =>
  groupFences(layout.fences, (fence) => fenceGaps(fence).map((gap) => `${gap.kind} ${String(gap.size)}`).join(';')).flatMap(({ first, names }) => {
    const gaps = fenceGaps(first);
    const report = (kind: 'under' | 'rails' | 'skin', key: 'where.gapUnder' | 'where.gapRails' | 'where.gapSkin'): Outcome[] => {
      const sizes = gaps.filter((gap) => gap.kind === kind).map((gap) => gap.size);
      if (sizes.length === 0) return [];
      const most = Math.max(...sizes);
      return [{ verdict: 'look', measured: most, where: say(key, { fences: names, gap: printedSmall(brief, most) }), at: null }];
    };
    const all = [...report('under', 'where.gapUnder'), ...report('rails', 'where.gapRails'), ...report('skin', 'where.gapSkin')];
    return all.length > 0 ? all : [judged(true, 0, say('where.gapNone', { fences: names }))];
  });
