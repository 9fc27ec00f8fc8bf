/** Length and volume of welds by geometry. Inches, square and cubic inches; size is the leg of a fillet or the gap that a flare is filled to. */

/** Circumference of an ellipse (Ramanujan's second approximation, exact for a circle, under 1e-4 for the ellipses of cut pipe). */
export function ellipseLength(a: number, b: number): number {
  const h = ((a - b) / (a + b)) ** 2;
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
}

/** Section of a fillet of two equal legs. */
export const filletArea = (size: number): number => size ** 2 / 2;

/** Section of a groove between square ends: the gap, or half the wall where it is less than that. */
export const squareArea = (wall: number, gap: number, leastGap: number): number => wall * Math.max(gap, wall * leastGap);

/** How far from the touch a round of this radius stands off a flat by `size`. */
export const flareReach = (radius: number, size: number): number => Math.sqrt(Math.max(0, radius ** 2 - Math.max(0, radius - size) ** 2));

/** Section between a flat and a round, filled from the touch to where the gap is `size`: the box less the circle in it. */
export function flareArea(radius: number, size: number): number {
  const x = flareReach(radius, size);
  return radius * x - (x * Math.sqrt(radius ** 2 - x ** 2) + radius ** 2 * Math.asin(Math.min(1, x / radius))) / 2;
}

/**
 * Two rounds that cross square and touch: the gap grows as x²/2p + z²/2r, so what is filled to a gap of `size` ends in an ellipse;
 * its length round, and its volume π·a·b·size/2. Parabolas for the circles: a little more than there is, by less than size/r.
 */
export function crossedRounds(p: number, r: number, size: number): { readonly length: number; readonly volume: number } {
  const a = Math.min(p, Math.sqrt(2 * p * size));
  const b = Math.min(r, Math.sqrt(2 * r * size));
  return { length: ellipseLength(a, b), volume: (Math.PI * a * b * size) / 2 };
}

/** How many stitches of `length` at `pitch` stand on a seam, the first and the last at its ends as near as the pitch allows. At least one. */
export const stitchCount = (seam: number, length: number, pitch: number): number => Math.max(1, Math.floor((seam - length) / pitch + 1e-9) + 1);

/** Weld laid on a seam of stitches: never more than the seam. */
export const stitchedLength = (seam: number, length: number, pitch: number): number =>
  length >= pitch ? seam : Math.min(seam, stitchCount(seam, length, pitch) * length);
