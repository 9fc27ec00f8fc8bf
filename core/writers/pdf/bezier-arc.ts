/** An arc as cubic Bézier curves, which is what a PDF has. */
import { type Vec, add, leftOf, scale, unitAt } from '../../base/points.ts';

/** A quarter of a right angle: such a curve strays from its arc by less than 1e-7 of the radius. */
const WIDEST = Math.PI / 8;

/**
 * The curves of an arc, in order: two control points and an end each. The control points lie on the tangents at 4/3·tan(θ/4) of the
 * radius, the usual approximation, which strays from the circle by about 2.7e-4·(θ/90°)^6 of the radius.
 */
export function bezierArc(center: Vec, radius: number, start: number, sweep: number): (readonly [Vec, Vec, Vec])[] {
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / WIDEST - 1e-9));
  const step = sweep / count;
  const reach = radius * (4 / 3) * Math.tan(step / 4);
  const on = (angle: number): Vec => add(center, scale(unitAt(angle), radius));
  return Array.from({ length: count }, (_, k) => {
    const from = start + k * step;
    const to = start + (k + 1) * step;
    return [
      add(on(from), scale(leftOf(unitAt(from)), reach)),
      add(on(to), scale(leftOf(unitAt(to)), -reach)),
      on(to),
    ] as const;
  });
}
