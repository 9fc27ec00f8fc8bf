import { distance, sub, cross, dot, type Vec } from '../../base/points.ts';
import { radians, type Radians } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type ControlPoint } from './control-points.ts';

/** The two tapes that fix a point best. */
export interface BestTie {
  /** At which they cross there, 0 to 90°. */
  readonly angle: Radians;
  readonly from: ControlPoint;
  readonly to: ControlPoint;
}

/** The pair of control points whose tapes cross most squarely at a point; null where the point is itself a control point. */
export function bestTie(point: Vec, controls: readonly ControlPoint[]): BestTie | null {
  if (controls.some((control) => distance(control.at, point) <= SAME_LENGTH)) return null;
  let best: BestTie | null = null;
  for (const [index, from] of controls.entries()) {
    for (const to of controls.slice(index + 1)) {
      const a = sub(from.at, point);
      const b = sub(to.at, point);
      const angle = radians(Math.atan2(Math.abs(cross(a, b)), Math.abs(dot(a, b))));
      if (best === null || angle > best.angle) best = { angle, from, to };
    }
  }
  return best;
}
