/** What follows the squeeze. */
import { add, scale, unitAt } from '../../base/points.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { SORT_PRACTICE } from '../../brief/sort-practice.ts';
import { otherSide } from '../../brief/types.ts';
import { distanceToFace, type Layout, type PenGate } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { judged, none, type Judge, type Outcome } from '../outcome.ts';
import { meets } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { printedSmall } from '../words/print.ts';

/**
 * Counted: the sort gates that stand. Without a squeeze pad or a sort pen there is nothing downstream to divert to. Then each whose open leaf
 * does not reach across the alley, which is as wide as its widest gate: it diverts nothing. The gap that is let pass: common practice, no source.
 */
export const sortGate: Judge = ({ brief, layout }) => {
  if (brief.squeezePad === null && brief.sortPens.length === 0) return none();
  const gates = layout.openings.flatMap((one) => (one.kind === 'pen-gate' && one.sorts ? [one] : []));
  const names = (list: readonly { readonly path: string }[]): string => list.map(({ path }) => path).join(', ');
  const where = brief.sortPens.length === 0 ? say('where.noSortGate')
    : gates.length === 0 ? say('where.sortGateOut', { names: names(brief.sortPens) })
      : say('where.sortGates', { count: gates.length, names: names(gates) });
  const short = gates.flatMap((gate): readonly Outcome[] => {
    const gap = gapBeyond(layout, gate);
    if (gap <= SORT_PRACTICE.mostGap + SAME_LENGTH) return [];
    const named = { name: gate.path, gap: printedSmall(brief, gap), most: printedSmall(brief, SORT_PRACTICE.mostGap) };
    return [judged(false, 0, say('where.sortGap', named), gate.at)];
  });
  return [judged(meets(rules['sort-gate'].limit, gates.length), gates.length, where, gates[0]?.at ?? null), ...short];
};

/** From the free end of an open leaf to the fence on the other side of the sort alley, inches. */
function gapBeyond({ runs }: Layout, { run, side, swing }: PenGate): number {
  const face = runs.find(({ name }) => name === run)?.faces[otherSide(side)];
  if (face === undefined || face === null) throw new Error(`a sort gate in an alley with one side: ${run}`);
  return distanceToFace(face, add(swing.pin, scale(unitAt(swing.shut + swing.turn), swing.reach)));
}
