import { type Inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { printDecimalInches, printLength, roundLength, type LengthUnits } from '../../units/index.ts';

/** A length that a list of settings bears: as on a drawing where that is what it is, else in decimals. */
export function printExactly(length: Inches, units: LengthUnits): string {
  const printed = printLength(length, units);
  if (Math.abs(roundLength(length, units) - length) <= SAME_LENGTH) return printed;
  return units === 'in' ? `${printDecimalInches(length)}"` : printLength(length, 'mm', 'bracket');
}
