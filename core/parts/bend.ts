/** The arcs of rolled pieces (geometry contract, Bends). Lengths in inches, angles in radians. */
import { inches, radians, type Inches, type Radians } from '../base/quantity.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';

/** The angle that a piece of this length takes on this radius. */
export const bendAngle = (radius: number, length: number): Radians => radians(length / radius);

/** Straight from end to end: 2·r·sin(a/2). */
export const chord = (radius: number, angle: number): Inches => inches(2 * radius * Math.sin(angle / 2));

/** From the middle of the chord to the arc: r·(1 - cos(a/2)). */
export const rise = (radius: number, angle: number): Inches => inches(radius * (1 - Math.cos(angle / 2)));

/** Of a gauge chord, the greatest share of the piece's inside chord that it may take: a straightedge must rest inside the ends. */
const GAUGE_SHARE = 0.9;

/**
 * The straightedge to lay on the concave side: the shop's gauge chord, or where that is over 0.9 of the piece's inside chord, 0.9 of it
 * rounded down to a whole inch.
 */
export function gaugeChord(insideRadius: number, angle: number, shopChord: number): Inches {
  const most = GAUGE_SHARE * chord(insideRadius, angle);
  return inches(shopChord > most ? Math.floor(most + SAME_LENGTH) : shopChord);
}

/**
 * How far the concave side stands off the middle of a straightedge of this length: Ri - sqrt(Ri² - (G/2)²).
 * Throws where the chord is longer than the circle is wide: a programmer's mistake.
 */
export function gaugeRise(insideRadius: number, gauge: number): Inches {
  const half = gauge / 2;
  if (half > insideRadius) throw new Error(`gauge chord ${String(gauge)} is over the diameter of radius ${String(insideRadius)}`);
  // The same figure without the difference of two large ones.
  return inches((half * half) / (insideRadius + Math.sqrt((insideRadius - half) * (insideRadius + half))));
}

/** The radius of an arc from a measured chord and the rise at its middle: c²/(8s) + s/2. Throws where the rise is not over 0. */
export function radiusFromRise(measuredChord: number, measuredRise: number): Inches {
  if (!(measuredRise > 0)) throw new Error(`no arc has a rise of ${String(measuredRise)}`);
  return inches((measuredChord * measuredChord) / (8 * measuredRise) + measuredRise / 2);
}

/** What to cut for a rolled piece: the straight ends that the rolls hold are trimmed after. */
export const orderLength = (length: number, grip: number): Inches => inches(length + 2 * grip);

/** The radius to set the rolls to. Springback = 1 - radius set / radius got. */
export const setRadius = (radius: number, springback: number): Inches => inches(radius * (1 - springback));
