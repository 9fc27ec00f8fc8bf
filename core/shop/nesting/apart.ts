/** Where one convex part may not stand beside another: the sum of one and the other turned half round (Minkowski). */
import { type Vec } from '../../base/points.ts';

/** A convex polygon, counter-clockwise, with the box round it. */
export interface Convex {
  readonly points: readonly Vec[];
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

export const convex = (points: readonly Vec[]): Convex => ({
  points,
  left: Math.min(...points.map(({ x }) => x)), right: Math.max(...points.map(({ x }) => x)),
  low: Math.min(...points.map(({ y }) => y)), high: Math.max(...points.map(({ y }) => y)),
});

/**
 * The places of `b`'s origin at which it overlaps `a`, or stands nearer to it than `spacing` along x and y: the inside of one convex
 * polygon. Spacing is kept by a square, so that rectangles stay rectangles; slantwise it is never less.
 */
export function apart(a: readonly Vec[], b: readonly Vec[], spacing: number): Convex {
  const turned = b.map(({ x, y }) => ({ x: -x, y: -y }));
  const s = spacing;
  const sum = minkowski(a, turned);
  return convex(s === 0 ? sum : minkowski(sum, [{ x: -s, y: -s }, { x: s, y: -s }, { x: s, y: s }, { x: -s, y: s }]));
}

/** The sum of two convex polygons, both counter-clockwise: their edges in the order of their headings. */
function minkowski(a: readonly Vec[], b: readonly Vec[]): readonly Vec[] {
  const [p, q] = [fromLowest(a), fromLowest(b)];
  const out: Vec[] = [];
  let [i, j] = [0, 0];
  while (i < p.length || j < q.length) {
    const [pi, qj] = [p[i % p.length]!, q[j % q.length]!];
    const at = { x: pi.x + qj.x, y: pi.y + qj.y };
    out.push(at);
    const [pn, qn] = [p[(i + 1) % p.length]!, q[(j + 1) % q.length]!];
    const turn = (pn.x - pi.x) * (qn.y - qj.y) - (pn.y - pi.y) * (qn.x - qj.x);
    if (j >= q.length || (i < p.length && turn > 0)) i++;
    else if (i >= p.length || turn < 0) j++;
    else {
      i++;
      j++;
    }
  }
  return out;
}

/** From the lowest corner, the leftmost of those: edges then head from 0 up to a whole turn. */
function fromLowest(ring: readonly Vec[]): readonly Vec[] {
  let first = 0;
  for (const [i, { x, y }] of ring.entries()) {
    const low = ring[first]!;
    if (y < low.y || (y === low.y && x < low.x)) first = i;
  }
  return [...ring.slice(first), ...ring.slice(0, first)];
}
