/** An arc from three points that were measured along it, in any frame. Inches. */
import { inches, type Inches } from '../base/quantity.ts';
import { cross, sub, type Vec } from '../base/points.ts';
import { holdAgainst, type ArcCheck, type ArcCheckFault, type ArcDrawn } from './arc-check.ts';

export type Three = readonly [Vec, Vec, Vec];

export interface ArcPoints extends ArcDrawn {
  /** In their order along the piece. */
  readonly points: Three;
}

/**
 * Chord and rise of three points measured along an arc: the chord joins the outer two, the rise is what the circle through all three has.
 * null where they lie on a line.
 */
export function arcThrough(a: Vec, b: Vec, c: Vec): { readonly chord: Inches; readonly rise: Inches; readonly radius: Inches } | null {
  const ab = Math.hypot(b.x - a.x, b.y - a.y);
  const bc = Math.hypot(c.x - b.x, c.y - b.y);
  const ca = Math.hypot(a.x - c.x, a.y - c.y);
  const twiceArea = Math.abs(turn(a, b, c));
  // A rise that no tape could read: nearer to a line than rounding can tell.
  if (twiceArea <= 1e-9 * ca * ca) return null;
  // Circumradius = product of the sides over four times the area.
  const radius = (ab * bc * ca) / (2 * twiceArea);
  const minor = radius - Math.sqrt(Math.max(0, radius * radius - (ca / 2) ** 2));
  // An acute angle at the middle point: the arc through it is more than half the circle.
  const isMajor = ab * ab + bc * bc > ca * ca;
  return { chord: inches(ca), rise: inches(isMajor ? 2 * radius - minor : minor), radius: inches(radius) };
}

/** Twice the area of the triangle, positive where the three turn to the left. */
const turn = (a: Vec, b: Vec, c: Vec): number => cross(sub(b, a), sub(c, a));

/**
 * The same check from three points. What the readings leave open is looked for with every coordinate off by `read` one way or the other,
 * all 64 ways: between them the radius has no extreme as long as the three stay far from a line and from each other.
 */
export function arcCheckPoints(measure: ArcPoints): ArcCheck | ArcCheckFault | 'points-on-a-line' | 'points-out-of-order' {
  const [a, b, c] = measure.points;
  const found = arcThrough(a, b, c);
  if (found === null) return 'points-on-a-line';
  if (found.rise > found.chord / 2) return 'points-out-of-order';
  const side = turn(a, b, c);
  const radii = shifted(measure.points, measure.read).map(([p, q, r]) => (turn(p, q, r) * side > 0 ? (arcThrough(p, q, r)?.radius ?? null) : null));
  const told = radii.filter((radius) => radius !== null);
  return holdAgainst({
    ...found,
    low: inches(Math.min(found.radius, ...told)),
    high: told.length < radii.length ? null : inches(Math.max(found.radius, ...told)),
  }, measure);
}

function shifted(points: Three, read: number): readonly Three[] {
  return Array.from({ length: 64 }, (_, bits): Three => {
    const off = (bit: number): number => (((bits >> bit) & 1) === 1 ? read : -read);
    const [a, b, c] = points;
    return [{ x: a.x + off(0), y: a.y + off(1) }, { x: b.x + off(2), y: b.y + off(3) }, { x: c.x + off(4), y: c.y + off(5) }];
  });
}
