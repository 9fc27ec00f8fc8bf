import { pounds, type Pounds } from '../base/quantity.ts';
import { parseDecimal, tidyFigures } from './parse-figure.ts';

/** Kilograms in a pound (avoirdupois), exact by definition (international yard and pound agreement, 1959). */
export const KG_PER_POUND = 0.45359237;

/** A weight in pounds from a number of pounds or a text with its unit: `1250 lb`, `600 kg`. Null for what is not a finite weight. */
export function parseWeight(value: string | number): Pounds | null {
  if (typeof value === 'number') return Number.isFinite(value) ? pounds(value + 0) : null;
  if (value.length > 40) return null;
  const match = /^([\d.]+) ?(lb\.?|lbs\.?|pounds?|kg)?$/i.exec(tidyFigures(value));
  const figure = match === null ? null : parseDecimal(match[1] ?? '');
  if (match === null || figure === null) return null;
  return pounds((match[2] ?? '').toLowerCase() === 'kg' ? figure / KG_PER_POUND : figure);
}
