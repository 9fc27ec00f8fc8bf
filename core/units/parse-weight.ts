import { pounds, type Pounds } from '../base/quantity.ts';
import { parseDecimal, parseRatio, tidyFigures } from './parse-figure.ts';

/** Kilograms in a pound (avoirdupois), exact by definition (international yard and pound agreement, 1959). */
export const KG_PER_POUND = 0.45359237;

/** A weight in pounds from a number of pounds or a text with its unit: `1250 lb`, `600 kg`. Null for what is not a finite weight. */
export function parseWeight(value: string | number): Pounds | null {
  if (typeof value === 'number') return Number.isFinite(value) ? pounds(value + 0) : null;
  if (value.length > 40) return null;
  const match = /^([\d.]+) ?(lb\.?|lbs\.?|pounds?|kg)?$/i.exec(tidyFigures(value));
  if (match === null) return null;
  const [, figure = '', unit = ''] = match;
  const weight = unit.toLowerCase() === 'kg' ? parseRatio(figure, 8, KG_PER_POUND * 1e8) : parseDecimal(figure);
  return weight === null ? null : pounds(weight);
}
