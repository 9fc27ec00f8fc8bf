/** Whether a rolled piece is the arc that was drawn, from what a welder measures on it. Inches. */
import { inches, type Inches } from '../base/quantity.ts';
import { type Vec } from '../base/points.ts';
import { radiusFromRise } from '../parts/bend.ts';
import { type Class13920 } from '../steel/tables/iso-13920.ts';
import { linearTolerance } from './linear-tolerance.ts';

export interface ArcMeasure {
  /** Along the straightedge, between the two points where it touches. */
  readonly chord: Inches;
  /** From the middle of the straightedge to the piece. */
  readonly rise: Inches;
  /** What each reading may be off by. */
  readonly read: Inches;
  /** Radius of the face that was measured, as drawn; null: none to compare with. */
  readonly expected: Inches | null;
  readonly grade: Class13920;
}

export interface ArcCheck {
  readonly radius: Inches;
  /** The least and greatest radius that gives these readings; `high` is null where the readings can't tell the arc from a straight. */
  readonly low: Inches;
  readonly high: Inches | null;
  readonly expected: Inches | null;
  /**
   * How far the ends of the measured chord lie off the drawn arc that touches the piece at its middle: the measured rise less the drawn
   * one, above 0 where the piece is bent too tight. null where there is nothing to compare with.
   */
  readonly error: Inches | null;
  /** Greatest error that the class allows for a length of this chord. */
  readonly tolerance: Inches;
  readonly within: boolean | null;
}

export type ArcCheckFault = 'rise-over-half-chord' | 'chord-over-diameter';

/**
 * The radius of a measured arc, r = c²/(8s) + s/2, with what the readings leave open: it grows with the chord and falls with the rise,
 * so the extremes stand at the ends of both readings.
 */
export function arcCheck({ chord, rise, read, expected, grade }: ArcMeasure): ArcCheck | ArcCheckFault {
  // Past a half circle the rise no longer falls as the radius grows.
  if (rise > chord / 2) return 'rise-over-half-chord';
  if (expected !== null && chord > 2 * expected) return 'chord-over-diameter';
  const tolerance = linearTolerance(chord, grade);
  const least = chord - read;
  const low = radiusFromRise(least, Math.min(rise + read, least / 2));
  const high = rise > read ? radiusFromRise(chord + read, rise - read) : null;
  const error = expected === null ? null : inches(rise - drawnRise(expected, chord));
  return {
    radius: radiusFromRise(chord, rise), low, high, expected, error, tolerance,
    within: error === null ? null : Math.abs(error) <= tolerance,
  };
}

/** r - sqrt(r² - (c/2)²), without the difference of two large figures. */
function drawnRise(radius: number, chord: number): number {
  const half = chord / 2;
  return (half * half) / (radius + Math.sqrt((radius - half) * (radius + half)));
}

/** Chord and rise of three points measured along an arc: the chord joins the outer two, the rise is what the circle through all three has. null where they lie on a line. */
export function arcThrough(a: Vec, b: Vec, c: Vec): { readonly chord: Inches; readonly rise: Inches; readonly radius: Inches } | null {
  const ab = Math.hypot(b.x - a.x, b.y - a.y);
  const bc = Math.hypot(c.x - b.x, c.y - b.y);
  const ca = Math.hypot(a.x - c.x, a.y - c.y);
  const twiceArea = Math.abs((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y));
  // A rise that no tape could read: nearer to a line than rounding can tell.
  if (twiceArea <= 1e-9 * ca * ca) return null;
  // Circumradius = product of the sides over four times the area.
  const radius = (ab * bc * ca) / (2 * twiceArea);
  const minor = radius - Math.sqrt(Math.max(0, radius * radius - (ca / 2) ** 2));
  // An acute angle at the middle point: the arc through it is more than half the circle.
  const isMajor = ab * ab + bc * bc > ca * ca;
  return { chord: inches(ca), rise: inches(isMajor ? 2 * radius - minor : minor), radius: inches(radius) };
}
