import { MM_PER_INCH, inches, type Inches } from '../base/quantity.ts';

export type LengthUnits = 'in' | 'mm';

/** The step that a drawing prints to: 1/16 in; in metric 1 mm, or 0.1 mm on bends and plates. */
export function printStep(units: LengthUnits, fine = false): Inches {
  if (units === 'in') return inches(1 / 16);
  return inches((fine ? 0.1 : 1) / MM_PER_INCH);
}

/**
 * How many of the smallest printed parts (sixteenths; millimeters or tenths of one) a length is nearest to, halves away from zero,
 * never a negative zero. Throws on what is not finite.
 */
export function printedParts(length: Inches, units: LengthUnits, fine = false): number {
  if (!Number.isFinite(length)) throw new Error(`not a length: ${String(length)}`);
  const parts = units === 'in' ? length * 16 : length * MM_PER_INCH * (fine ? 10 : 1);
  // A metric length that a person wrote to the half comes back from inches a hair off; the nudge is 1e-9 of a step.
  const rounded = Math.floor(Math.abs(parts) + 0.5 + 1e-9);
  return rounded === 0 ? 0 : Math.sign(parts) * rounded;
}

/** A length as it will be read from the paper, so that printed figures can be added and close. */
export function roundLength(length: Inches, units: LengthUnits, fine = false): Inches {
  const parts = printedParts(length, units, fine);
  if (units === 'in') return inches(parts / 16);
  return inches((fine ? parts / 10 : parts) / MM_PER_INCH);
}
