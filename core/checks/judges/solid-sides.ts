/** Which sides are closed by sheet, and how far up. */
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { otherSide, type Brief } from '../../brief/types.ts';
import { type Fence } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { judged, none, type Judge, type Outcome } from '../outcome.ts';
import { groupFences, partOf, type FenceGroup } from '../words/fence-groups.ts';
import { printed } from '../words/print.ts';

const isPartClosed = ({ brief }: Fence): boolean => brief.sheet !== null && brief.solidTo > brief.solidFrom;
const isClosed = (fence: Fence): boolean => isPartClosed(fence) && fence.brief.solidTo >= fence.brief.height - SAME_LENGTH;

export const solidCrowd: Judge = ({ brief, layout }) =>
  bySkin(layout.fences.filter((fence) => fence.run === 'crowd-pen')).map((group) => skinOutcome(brief, group, isClosed(group.first)));

/**
 * Perimeter runs: the pen's outer side, along the alley and the junction (the pen itself is `solid-crowd`'s); closed means to the top.
 * A side of the chute with no catwalk is closed in part at least; one beside a catwalk is asked by `catwalk-skin`.
 */
export const solidOuter: Judge = ({ brief, layout }) => {
  const outer = otherSide(brief.crowdPen.hand);
  const perimeter = layout.fences.filter((fence) => fence.side === outer && (partOf(fence.run) === 'alley' || fence.run === 'junction'));
  const decked = new Set(layout.catwalks.flatMap(({ stretches }) => stretches.map(({ run, side }) => `${run} ${side}`)));
  const [beside, bare] = [true, false].map((with_) =>
    bySkin(layout.fences.filter((fence) => partOf(fence.run) === 'chute' && decked.has(`${fence.run} ${fence.side}`) === with_)));
  return [
    ...bySkin(perimeter).map((group) => skinOutcome(brief, group, isClosed(group.first))),
    ...bare!.map((group) => skinOutcome(brief, group, isPartClosed(group.first))),
    ...beside!.map(({ names }) => judged(true, null, say('where.besideCatwalk', { fences: names }))),
  ];
};

/** Both sides of every loading ramp, closed to the top. */
export const solidRamp: Judge = ({ brief, layout }) => {
  const loading = layout.ramps.filter((ramp) => ramp.brief.kind === 'load').map((ramp) => ramp.name);
  const sides = bySkin(layout.fences.filter((fence) => loading.includes(fence.run)));
  return sides.length > 0 ? sides.map((group) => skinOutcome(brief, group, isClosed(group.first))) : none();
};

function bySkin(fences: readonly Fence[]): readonly FenceGroup[] {
  return groupFences(fences, (fence) =>
    isPartClosed(fence) ? [fence.brief.solidFrom, fence.brief.solidTo, fence.brief.height].join(' ') : '');
}

function skinOutcome(brief: Brief, { first, names }: FenceGroup, met: boolean): Outcome {
  if (!isPartClosed(first)) return judged(met, null, say('where.open', { fences: names }));
  const { solidFrom, solidTo, height } = first.brief;
  const figures = { fences: names, from: printed(brief, solidFrom), to: printed(brief, solidTo) };
  return judged(met, null, isClosed(first) ? say('where.closed', figures) : say('where.part', { ...figures, height: printed(brief, height) }));
}
