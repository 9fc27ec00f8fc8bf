import { positiveAngle, signedAngle } from './angle.ts';
import { curveLength, type Curve } from './curve.ts';
import { angleOf, dot, sub, type Vec } from './points.ts';
import { type Inches } from './quantity.ts';

/**
 * How far along a curve (inches from its start, in its direction, carried on past its ends) a point on its carrier lies.
 * On an arc the nearer way round from the start is taken, so a point just before the start is negative.
 */
export function positionFromStart(curve: Curve<Vec>, point: Vec): Inches {
  if (curve.kind === 'arc') {
    const angle = signedAngle((angleOf(sub(point, curve.center)) - curve.start) * Math.sign(curve.sweep));
    return (angle * curve.radius) as Inches;
  }
  const d = sub(curve.b, curve.a);
  const size = Math.hypot(d.x, d.y);
  return (size === 0 ? 0 : dot(sub(point, curve.a), d) / size) as Inches;
}

/** Whether a point on a curve's carrier lies on the curve itself, ends included, to within `tolerance` inches. */
export function liesOn(curve: Curve<Vec>, point: Vec, tolerance: number): boolean {
  if (curve.kind === 'line') {
    const u = positionFromStart(curve, point);
    return u >= -tolerance && u <= curveLength(curve) + tolerance;
  }
  const round = positiveAngle((angleOf(sub(point, curve.center)) - curve.start) * Math.sign(curve.sweep));
  const slack = tolerance / curve.radius;
  return round <= Math.abs(curve.sweep) + slack || round >= 2 * Math.PI - slack;
}
