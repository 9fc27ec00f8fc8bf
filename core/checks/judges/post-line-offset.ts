import { type Fence, facePoint } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { judged, none, type Judge, type Outcome } from '../outcome.ts';
import { meets } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { printedSmall } from '../words/print.ts';

/** Each join in line where the fences differ in build; the post of the downstream one stands. */
export const postLineOffset: Judge = ({ brief, layout }) => {
  const last: Partial<Record<Fence['side'], Fence>> = {};
  const joins: Outcome[] = [];
  // A fence beside the walk joins none in line.
  const asides = new Set(layout.runs.filter(({ aside }) => aside).map(({ name }) => name));
  for (const fence of layout.fences) {
    if (asides.has(fence.run)) continue;
    const before = last[fence.side];
    last[fence.side] = fence;
    if (before === undefined || fence.spans[0]?.start.kind !== 'joint' || !differ(before, fence)) continue;
    const offset = Math.abs(fence.section.k - before.section.k);
    const where = say('where.offset', { first: before.run, second: fence.run, side: fence.side, offset: printedSmall(brief, offset) });
    joins.push(judged(meets(rules['post-line-offset'].limit, offset), offset, where, facePoint(fence, 0, fence.section.k)));
  }
  return joins.length === 0 ? none() : joins;
};

/** Whether two fences differ in what sets their offsets. */
function differ(a: Fence, b: Fence): boolean {
  return a.brief.construction !== b.brief.construction || a.section.t !== b.section.t || a.section.d !== b.section.d || a.section.D !== b.section.D;
}
