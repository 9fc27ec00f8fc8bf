/** A directed line or arc in any one frame. Arcs stay arcs until a writer has none to write. */
import { type Inches, type Radians } from './quantity.ts';
import { type Vec } from './points.ts';

export interface Line<P extends Vec> {
  readonly kind: 'line';
  readonly a: P;
  readonly b: P;
}
export interface Arc<P extends Vec> {
  readonly kind: 'arc';
  readonly center: P;
  readonly radius: Inches;
  /** Direction from the center to the first point, counter-clockwise from +x. */
  readonly start: Radians;
  /** Signed: positive runs counter-clockwise. */
  readonly sweep: Radians;
}
export type Curve<P extends Vec> = Line<P> | Arc<P>;

/** Length along a curve, inches. */
export function curveLength(curve: Curve<Vec>): Inches {
  return (curve.kind === 'line'
    ? Math.hypot(curve.b.x - curve.a.x, curve.b.y - curve.a.y)
    : curve.radius * Math.abs(curve.sweep)) as Inches;
}

/** The point at a fraction (0 to 1, beyond it extrapolates) of a curve. */
export function curvePoint<P extends Vec>(curve: Curve<P>, fraction: number): P {
  if (curve.kind === 'line') {
    return { x: curve.a.x + (curve.b.x - curve.a.x) * fraction, y: curve.a.y + (curve.b.y - curve.a.y) * fraction } as P;
  }
  const angle = curve.start + curve.sweep * fraction;
  return { x: curve.center.x + curve.radius * Math.cos(angle), y: curve.center.y + curve.radius * Math.sin(angle) } as P;
}

/** Heading (radians, counter-clockwise from +x) at a fraction of a curve. */
export function curveHeading(curve: Curve<Vec>, fraction: number): Radians {
  if (curve.kind === 'line') return Math.atan2(curve.b.y - curve.a.y, curve.b.x - curve.a.x) as Radians;
  return (curve.start + curve.sweep * fraction + (Math.sign(curve.sweep) * Math.PI) / 2) as Radians;
}

/** The part of a curve between two fractions, in that direction. */
export function curvePart<P extends Vec>(curve: Curve<P>, from: number, to: number): Curve<P> {
  if (curve.kind === 'line') return { kind: 'line', a: curvePoint(curve, from), b: curvePoint(curve, to) };
  return {
    ...curve,
    start: (curve.start + curve.sweep * from) as Radians,
    sweep: (curve.sweep * (to - from)) as Radians,
  };
}
