import { distance } from '../../base/points.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { facePoint } from '../fence-points.ts';
import { type Foul } from '../types.ts';
import { type Join } from './join.ts';

/** Where fences of different build join in line, the two post centers may lie this far apart, inches (geometry contract). */
const MOST_OFFSET = 0.25;

/** Joins in line whose post lines are offset by more than is allowed. A corner has no such offset: its post stands on both lines. */
export function offsetFouls(joins: readonly Join[]): readonly Foul[] {
  return joins.flatMap(({ upstream, downstream }) => {
    if (downstream.spans[0]!.start.kind !== 'joint') return [];
    const at = facePoint(downstream, 0, downstream.section.k);
    const offset = distance(at, facePoint(downstream, 0, upstream.section.k));
    return offset > MOST_OFFSET + SAME_LENGTH ? [{ kind: 'post-line-offset' as const, at, measured: offset, runs: [upstream.run, downstream.run] }] : [];
  });
}
