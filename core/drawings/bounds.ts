/** The box round points and curves, and moving plan curves into a view. */
import { type Curve, curvePoint } from '../base/curve.ts';
import { type Inches, type Radians } from '../base/quantity.ts';
import { type PlanPoint, type Vec, type ViewPoint, viewPoint } from '../base/points.ts';

export interface Bounds {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

export function boundsOf(points: readonly Vec[]): Bounds {
  let left = Infinity;
  let right = -Infinity;
  let low = Infinity;
  let high = -Infinity;
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return { left, right, low, high };
}

/** Points that hold a curve's box: its ends and, on an arc, where it turns. */
export function extremesOf(curve: Curve<Vec>): Vec[] {
  const out = [curvePoint(curve, 0), curvePoint(curve, 1)];
  if (curve.kind === 'line') return out;
  const from = Math.min(curve.start, curve.start + curve.sweep);
  const to = Math.max(curve.start, curve.start + curve.sweep);
  for (let q = Math.ceil(from / (Math.PI / 2)); q * (Math.PI / 2) <= to; q += 1) {
    const angle = q * (Math.PI / 2);
    out.push({ x: curve.center.x + curve.radius * Math.cos(angle), y: curve.center.y + curve.radius * Math.sin(angle) });
  }
  return out;
}

/** Turns and moves the plan so that `origin` is the view's zero and `heading` points along +x. */
export interface Turn {
  point(p: Vec): ViewPoint;
  angle(angle: number): number;
  curve(curve: Curve<PlanPoint>): Curve<ViewPoint>;
}

export function turnPlan(origin: Vec, heading: number): Turn {
  const cos = Math.cos(-heading);
  const sin = Math.sin(-heading);
  const point = (p: Vec): ViewPoint => {
    const x = p.x - origin.x;
    const y = p.y - origin.y;
    return viewPoint(x * cos - y * sin, x * sin + y * cos);
  };
  return {
    point,
    angle: (angle) => angle - heading,
    curve: (curve) =>
      curve.kind === 'line'
        ? { kind: 'line', a: point(curve.a), b: point(curve.b) }
        : { kind: 'arc', center: point(curve.center), radius: curve.radius as Inches, start: (curve.start - heading) as Radians, sweep: curve.sweep },
  };
}
