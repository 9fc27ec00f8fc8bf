import { positiveAngle } from '../base/angle.ts';
import { curvePoint, type Curve } from '../base/curve.ts';
import { angleOf, distance, dot, sub, type PlanPoint, type Vec } from '../base/points.ts';

/** The point of a curve, ends included, that is nearest to `point`: where it is, its fraction (0 to 1) of the curve, and how far off. */
export interface Nearest {
  readonly at: PlanPoint;
  readonly fraction: number;
  readonly away: number;
}

export function nearestOnCurve(curve: Curve<PlanPoint>, point: Vec): Nearest {
  const fraction = fractionNear(curve, point);
  const at = curvePoint(curve, fraction);
  return { at, fraction, away: distance(at, point) };
}

function fractionNear(curve: Curve<PlanPoint>, point: Vec): number {
  if (curve.kind === 'line') {
    const way = sub(curve.b, curve.a);
    const square = dot(way, way);
    return square === 0 ? 0 : Math.min(1, Math.max(0, dot(sub(point, curve.a), way) / square));
  }
  const sweep = Math.abs(curve.sweep);
  const turned = positiveAngle((angleOf(sub(point, curve.center)) - curve.start) * Math.sign(curve.sweep));
  if (turned <= sweep) return sweep === 0 ? 0 : turned / sweep;
  return distance(curvePoint(curve, 0), point) <= distance(curvePoint(curve, 1), point) ? 0 : 1;
}
