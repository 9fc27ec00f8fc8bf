/** What a line or an arc lies on when it is carried on past its ends. */
import { type Curve } from './curve.ts';
import { cross, dot, sub, unitAt, type Vec } from './points.ts';
import { SAME_ANGLE, SAME_LENGTH } from './tolerance.ts';

/** `along` is a unit vector. */
interface LineCarrier {
  readonly kind: 'line';
  readonly through: Vec;
  readonly along: Vec;
}
interface CircleCarrier {
  readonly kind: 'circle';
  readonly center: Vec;
  readonly radius: number;
}
export type Carrier = LineCarrier | CircleCarrier;

/** The endless line or the whole circle on which a curve lies. A line of no length lies on the +x direction through it. */
export function carrierOf(curve: Curve<Vec>): Carrier {
  if (curve.kind === 'arc') return { kind: 'circle', center: curve.center, radius: curve.radius };
  const d = sub(curve.b, curve.a);
  const size = Math.hypot(d.x, d.y);
  return { kind: 'line', through: curve.a, along: size === 0 ? unitAt(0) : { x: d.x / size, y: d.y / size } };
}

/**
 * Where two carriers meet: none, one or two points, exact (no steps, no polylines). A tangent
 * touches. Carriers that coincide or run parallel: none.
 */
export function carriersMeet(a: Carrier, b: Carrier): readonly Vec[] {
  if (a.kind === 'line') return b.kind === 'line' ? linesMeet(a, b) : lineMeetsCircle(a, b);
  return b.kind === 'line' ? lineMeetsCircle(b, a) : circlesMeet(a, b);
}

function linesMeet(a: LineCarrier, b: LineCarrier): readonly Vec[] {
  const sine = cross(a.along, b.along);
  if (Math.abs(sine) < SAME_ANGLE) return [];
  const t = cross(sub(b.through, a.through), b.along) / sine;
  return [{ x: a.through.x + a.along.x * t, y: a.through.y + a.along.y * t }];
}

/** A miss by SAME_LENGTH still touches, so that floating noise does not decide whether a tangent does. */
const touching = (radius: number): number => 2 * radius * SAME_LENGTH;

function lineMeetsCircle(line: LineCarrier, circle: CircleCarrier): readonly Vec[] {
  const to = sub(circle.center, line.through);
  const foot = dot(to, line.along);
  const away = cross(line.along, to);
  const square = (circle.radius - away) * (circle.radius + away);
  if (square < -touching(circle.radius)) return [];
  const half = Math.sqrt(Math.max(0, square));
  const at = (t: number): Vec => ({ x: line.through.x + line.along.x * t, y: line.through.y + line.along.y * t });
  return half === 0 ? [at(foot)] : [at(foot - half), at(foot + half)];
}

function circlesMeet(a: CircleCarrier, b: CircleCarrier): readonly Vec[] {
  const to = sub(b.center, a.center);
  const apart = Math.hypot(to.x, to.y);
  if (apart === 0) return [];
  // Foot of the common chord, from a's center (law of cosines).
  const foot = (apart + ((a.radius - b.radius) * (a.radius + b.radius)) / apart) / 2;
  const square = (a.radius - foot) * (a.radius + foot);
  if (square < -touching(Math.min(a.radius, b.radius))) return [];
  const half = Math.sqrt(Math.max(0, square));
  const u = { x: to.x / apart, y: to.y / apart };
  const at = (h: number): Vec => ({ x: a.center.x + u.x * foot - u.y * h, y: a.center.y + u.y * foot + u.x * h });
  return half === 0 ? [at(0)] : [at(-half), at(half)];
}
