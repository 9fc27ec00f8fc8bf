/** Whether a rolled piece is the arc that was drawn, from what a welder measures on it. Inches. */
import { inches, type Inches } from '../base/quantity.ts';
import { radiusFromRise } from '../parts/bend.ts';
import { type Class13920 } from '../steel/tables/iso-13920.ts';
import { linearTolerance } from './linear-tolerance.ts';

/** What a piece is held against. */
export interface ArcDrawn {
  /** What each reading may be off by. */
  readonly read: Inches;
  /** Radius of the face that was measured, as drawn; null: none to compare with. */
  readonly expected: Inches | null;
  /** Length of the whole piece round that face: the error is told at its ends then, else at the ends of what was measured. */
  readonly panel?: Inches | null;
  readonly grade: Class13920;
}

export interface ArcMeasure extends ArcDrawn {
  /** Along the straightedge, between the two points where it touches. */
  readonly chord: Inches;
  /** From the middle of the straightedge to the piece. */
  readonly rise: Inches;
}

/** What the readings say of the arc itself. */
export interface ArcRead {
  readonly chord: Inches;
  readonly rise: Inches;
  readonly radius: Inches;
  readonly low: Inches;
  readonly high: Inches | null;
}

export interface ArcCheck {
  readonly radius: Inches;
  /** The least and greatest radius that gives these readings; `high` is null where the readings can't tell the arc from a straight. */
  readonly low: Inches;
  readonly high: Inches | null;
  readonly expected: Inches | null;
  /**
   * How far the ends of the measured chord, or of the piece where its length is given, lie off the drawn arc that touches the piece at its middle: the measured rise less the drawn
   * one, above 0 where the piece is bent too tight. null where there is nothing to compare with.
   */
  readonly error: Inches | null;
  /** Greatest error that the class allows for a length of this chord, or of the piece. */
  readonly tolerance: Inches;
  readonly within: boolean | null;
  /** Whether the verdict is the same whichever way the readings were off; null where there is none. */
  readonly sure: boolean | null;
}

export type ArcCheckFault = 'rise-over-half-chord' | 'chord-over-diameter' | 'panel-over-half-turn';

/**
 * The radius of a measured arc, r = c²/(8s) + s/2, with what the readings leave open: it grows with the chord and falls with the rise,
 * so the extremes stand at the ends of both readings.
 */
export function arcCheck(measure: ArcMeasure): ArcCheck | ArcCheckFault {
  const { chord, rise, read } = measure;
  // Past a half circle the rise no longer falls as the radius grows.
  if (rise > chord / 2) return 'rise-over-half-chord';
  const least = chord - read;
  return holdAgainst({
    chord, rise, radius: radiusFromRise(chord, rise),
    low: radiusFromRise(least, Math.min(rise + read, least / 2)),
    high: rise > read ? radiusFromRise(chord + read, rise - read) : null,
  }, measure);
}

/** An arc that was read, held against the drawn one. */
export function holdAgainst(arc: ArcRead, { read, expected, panel, grade }: ArcDrawn): ArcCheck | ArcCheckFault {
  const { chord, rise, radius, low, high } = arc;
  if (expected !== null && chord > 2 * expected) return 'chord-over-diameter';
  const whole = panel ?? null;
  if (whole !== null && expected !== null && whole > Math.PI * Math.min(expected, radius)) return 'panel-over-half-turn';
  const tolerance = linearTolerance(whole ?? chord, grade);
  const none = { radius, low, high, expected, error: null, tolerance, within: null, sure: null };
  if (expected === null) return none;
  // Over a chord the rise is what was read, by `read` at most off; over a whole piece it follows from the radius.
  const errors = whole === null
    ? [0, -read, read].map((off) => rise + off - drawnRise(expected, chord))
    : [radius, low, high].map((one) => (one === null ? 0 : endRise(one, whole)) - endRise(expected, whole));
  const error = errors[0]!;
  const within = Math.abs(error) <= tolerance;
  const sure = errors.every((one) => Math.abs(one) <= tolerance === within && (within || one * error > 0));
  return { ...none, error: inches(error), within, sure };
}

/** How far the ends of an arc of this length lie off the line that touches it at its middle; past half a turn farther than can be told. */
const endRise = (radius: number, panel: number): number => (panel > Math.PI * radius ? Infinity : 2 * radius * Math.sin(panel / (4 * radius)) ** 2);

/** r - sqrt(r² - (c/2)²), without the difference of two large figures. */
function drawnRise(radius: number, chord: number): number {
  const half = chord / 2;
  return (half * half) / (radius + Math.sqrt((radius - half) * (radius + half)));
}
