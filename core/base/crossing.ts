import { carrierOf, carriersMeet } from './carrier.ts';
import { curvePoint, type Curve } from './curve.ts';
import { cross, distance, sub, type Vec } from './points.ts';
import { liesOn } from './position.ts';
import { SAME_LENGTH } from './tolerance.ts';

/**
 * Where two curves meet, their ends included: exact points of lines and arcs. Where they lie on one another, the ends and the
 * middle of what they share stand for it.
 */
export function crossings(a: Curve<Vec>, b: Curve<Vec>): readonly Vec[] {
  if (sameCarrier(a, b)) return shared(a, b);
  return carriersMeet(carrierOf(a), carrierOf(b)).filter((p) => liesOn(a, p, SAME_LENGTH) && liesOn(b, p, SAME_LENGTH));
}

function sameCarrier(a: Curve<Vec>, b: Curve<Vec>): boolean {
  if (a.kind === 'arc') return b.kind === 'arc' && distance(a.center, b.center) < SAME_LENGTH && Math.abs(a.radius - b.radius) < SAME_LENGTH;
  return b.kind === 'line' && offLine(a, b.a) < SAME_LENGTH && offLine(a, b.b) < SAME_LENGTH;
}

function offLine(line: Extract<Curve<Vec>, { kind: 'line' }>, point: Vec): number {
  const d = sub(line.b, line.a);
  const size = Math.hypot(d.x, d.y);
  return size === 0 ? distance(line.a, point) : Math.abs(cross(d, sub(point, line.a))) / size;
}

/** Of two curves on one carrier: each end of one that lies on the other, and the middle of each that does. */
function shared(a: Curve<Vec>, b: Curve<Vec>): readonly Vec[] {
  const marks = [0, 0.5, 1];
  return [
    ...marks.map((f) => curvePoint(a, f)).filter((p) => liesOn(b, p, SAME_LENGTH)),
    ...marks.map((f) => curvePoint(b, f)).filter((p) => liesOn(a, p, SAME_LENGTH)),
  ];
}
