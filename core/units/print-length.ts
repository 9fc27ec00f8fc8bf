import { type Inches } from '../base/quantity.ts';
import { printedParts, type LengthUnits } from './round-length.ts';

/** `feet`: `12'-3 5/8"`. `inches`: `147 5/8"`. `bracket`: feet with the decimal inches behind, for bends and plates. */
export type LengthForm = 'feet' | 'inches' | 'bracket';

function fraction(sixteenths: number): string {
  let top = sixteenths;
  let bottom = 16;
  while (top % 2 === 0 && bottom > 1) {
    top /= 2;
    bottom /= 2;
  }
  return `${String(top)}/${String(bottom)}`;
}

function printInches(sixteenths: number): string {
  const whole = Math.floor(sixteenths / 16);
  const rest = sixteenths % 16;
  if (rest === 0) return `${String(whole)}"`;
  return whole === 0 ? `${fraction(rest)}"` : `${String(whole)} ${fraction(rest)}"`;
}

/** Decimal inches, two places at least and three at most, never a negative zero: `145.25`, `145.292`. */
export function printDecimalInches(length: Inches): string {
  if (!Number.isFinite(length)) throw new Error(`not a length: ${String(length)}`);
  const text = length.toFixed(3).replace(/0$/, '');
  return text === '-0.00' ? '0.00' : text;
}

function printMetric(length: Inches, fine: boolean, unit: boolean): string {
  const parts = printedParts(length, 'mm', fine);
  return `${fine ? (parts / 10).toFixed(1) : String(parts)}${unit ? ' mm' : ''}`;
}

/**
 * A length as a drawing bears it: to the nearest 1/16 in, carried (15 31/32 in prints as 1'-4"), a sign in front of a negative one,
 * never a negative zero; in metric whole millimeters, or one decimal where `form` is `bracket`, never meters.
 * `unit: false` leaves the `mm` off, for views that say their unit. Throws on what is not finite.
 */
export function printLength(length: Inches, units: LengthUnits, form: LengthForm = 'feet', unit = true): string {
  if (units === 'mm') return printMetric(length, form === 'bracket', unit);
  const parts = printedParts(length, 'in');
  const size = Math.abs(parts);
  const sign = parts < 0 ? '-' : '';
  const text = form === 'inches' || size < 192
    ? printInches(size)
    : `${String(Math.floor(size / 192))}'-${size % 192 > 0 && size % 192 < 16 ? '0 ' : ''}${printInches(size % 192)}`;
  return form === 'bracket' ? `${sign}${text} (${printDecimalInches(length)})` : `${sign}${text}`;
}
