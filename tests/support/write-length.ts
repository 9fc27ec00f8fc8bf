import { type Draw } from './draw.ts';

/** A length as a person might write it in a file: a number of inches, feet and inches, or exact millimeters. */
export function writeLength(draw: Draw, units: 'in' | 'mm', length: number): number | string {
  const isSixteenth = Number.isInteger(length * 16);
  if (!isSixteenth || draw.chance(0.4)) return length;
  // A sixteenth of an inch is 1.5875 mm: four decimals hold it exactly.
  if (units === 'mm') return `${String(Number((length * 25.4).toFixed(4)))} mm`;
  const sign = length < 0 ? '-' : '';
  const size = Math.abs(length);
  const whole = Math.floor(size % 12);
  const parts = Math.round((size % 1) * 16);
  const inches = parts === 0 ? String(whole) : `${String(whole)} ${String(parts)}/16`;
  return size < 12 ? `${sign}${inches} in` : `${sign}${String(Math.floor(size / 12))}'-${inches}"`;
}
