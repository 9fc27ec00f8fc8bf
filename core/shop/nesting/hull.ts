import { type Vec } from '../../base/points.ts';

/** The convex hull of points, counter-clockwise (Andrew's monotone chain). */
export function hullOf(points: readonly Vec[]): readonly Vec[] {
  const inOrder = points.toSorted((a, b) => a.x - b.x || a.y - b.y);
  const half = (list: readonly Vec[]): readonly Vec[] => {
    const out: Vec[] = [];
    for (const p of list) {
      while (out.length > 1 && cross(out.at(-2)!, out.at(-1)!, p) <= 0) out.pop();
      out.push(p);
    }
    return out.slice(0, -1);
  };
  return [...half(inOrder), ...half(inOrder.toReversed())];
}

const cross = (a: Vec, b: Vec, c: Vec): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
