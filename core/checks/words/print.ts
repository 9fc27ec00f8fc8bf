import { type Vec } from '../../base/points.ts';
import { inches, MM_PER_INCH, type Radians } from '../../base/quantity.ts';
import { type Brief } from '../../brief/types.ts';
import { printAngle, printLength } from '../../units/index.ts';

/** A length in the project's own units. */
export const printed = (brief: Brief, length: number): string => printLength(inches(length), brief.units);

/** A length under a foot or so in the project's own units, never in feet. */
export const printedSmall = (brief: Brief, length: number): string => printLength(inches(length), brief.units, 'inches');

/** A point of the plan, both figures in the project's own units. */
export const printedPoint = (brief: Brief, at: Vec): { readonly x: string; readonly y: string } =>
  ({ x: printed(brief, at.x), y: printed(brief, at.y) });

/** An area in square feet, in a metric project in square meters, one decimal. */
export function printedArea(brief: Brief, squareInches: number): string {
  if (brief.units === 'in') return `${(squareInches / 144).toFixed(1)} ft2`;
  return `${((squareInches * MM_PER_INCH ** 2) / 1e6).toFixed(1)} m2`;
}

/** An angle in degrees. */
export const printedAngle = (angle: Radians): string => printAngle(angle);

/** What soil bears sideways, given in psf a foot of depth; in a metric project kPa a meter (1 lb = 4.4482216 N). */
export const printedBearing = (brief: Brief, bearing: number): string =>
  (brief.units === 'in' ? `${String(bearing)} psf/ft` : `${(bearing * 4.4482216 / 0.3048 ** 3 / 1000).toFixed(1)} kPa/m`);
