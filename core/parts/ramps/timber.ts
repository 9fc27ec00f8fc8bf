import { inches, pounds, type Pounds } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { printDecimalInches, printLength, roundLength } from '../../units/index.ts';
import { RAMP_PRACTICE } from './practice.ts';

/** A size as a timber yard calls it: a fraction where it is one, else decimals. Always inches, so that units do not change a mark. */
function sizeName(size: number): string {
  const length = inches(size);
  const whole = Math.abs(roundLength(length, 'in') - length) <= SAME_LENGTH;
  return whole ? printLength(length, 'in', 'inches').replace('"', '') : printDecimalInches(length);
}

/** `timber 2 x 12`: thickness, then width. */
export const timberName = (thick: number, wide: number): string => `timber ${sizeName(thick)} x ${sizeName(wide)}`;

export const timberWeight = (thick: number, wide: number, long: number): Pounds => pounds(RAMP_PRACTICE.timberDensity * thick * wide * long);
