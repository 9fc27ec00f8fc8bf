import { type Curve } from './curve.ts';
import { type Vec } from './points.ts';
import { type Inches } from './quantity.ts';

/**
 * The curve beside another, `left` inches to the left of its direction (negative: to the right). Lines stay lines, arcs stay arcs.
 * An arc whose radius would come to nothing is a programmer's mistake and throws with the radius.
 */
export function offsetCurve<P extends Vec>(curve: Curve<P>, left: number): Curve<P> {
  if (curve.kind === 'arc') {
    const radius = curve.radius - Math.sign(curve.sweep) * left;
    if (!(radius > 0)) throw new Error(`offset arc has no radius: ${String(radius)}`);
    return { ...curve, radius: radius as Inches };
  }
  const dx = curve.b.x - curve.a.x;
  const dy = curve.b.y - curve.a.y;
  const size = Math.hypot(dx, dy);
  if (size === 0) throw new Error('a line of no length has no side');
  const shift = (p: P): P => ({ x: p.x - (dy / size) * left, y: p.y + (dx / size) * left }) as P;
  return { kind: 'line', a: shift(curve.a), b: shift(curve.b) };
}
