import { contourBox, flatArea } from '../../base/flat-curves.ts';
import { contourPolygon } from '../../base/flat-polygon.ts';
import { type FlatShape } from '../../base/flat-shape.ts';
import { type Vec } from '../../base/points.ts';
import { moveShape, type Turn } from '../plates/move-shape.ts';
import { convexParts } from './convex-parts.ts';

/** A part turned one way, its lower left corner at the origin, as convex pieces that hold all its metal. */
export interface Mold {
  readonly id: string;
  readonly turn: Turn;
  /** From the turned shape's own origin to its lower left corner's place. */
  readonly shift: Vec;
  readonly width: number;
  readonly height: number;
  readonly area: number;
  readonly parts: readonly (readonly Vec[])[];
}

/** Steps of arcs here: 2 % of the radius round the metal at most. */
const ARC_STEP = Math.PI / 8;

/** The molds of a part in these turns, those that come out alike once. Holes that nothing of `least` size could use are taken as filled. */
export function moldsOf(id: string, shape: FlatShape, turns: readonly Turn[], least: number): readonly Mold[] {
  const seen = new Set<string>();
  return turns.flatMap((turn) => {
    const turned = moveShape(shape, { x: 0, y: 0 }, turn);
    const { left, right, low, high } = contourBox(turned.outer);
    const placed = moveShape(turned, { x: -left, y: -low });
    const outer = contourPolygon(placed.outer, 'around', ARC_STEP);
    const holes = placed.holes.filter((hole) => {
      const box = contourBox(hole);
      return Math.min(box.right - box.left, box.high - box.low) >= least;
    }).map((hole) => contourPolygon(hole, 'within', ARC_STEP));
    const parts = convexParts(outer, holes);
    const key = [outer, ...holes].flat().map(({ x, y }) => `${x.toFixed(6)} ${y.toFixed(6)}`).toSorted().join(';');
    if (seen.has(key)) return [];
    seen.add(key);
    return [{ id, turn, shift: { x: -left, y: -low }, width: right - left, height: high - low, area: flatArea(shape), parts }];
  });
}
