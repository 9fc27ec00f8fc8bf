import { inches, type Inches } from '../base/quantity.ts';
import { parseFigure, parseRatio, tidyFigures } from './parse-figure.ts';

/** Longer than any length that a person writes; keeps the patterns below cheap on hostile input. */
const LONGEST_TEXT = 60;
/** Powers of ten that bring a metric unit to tenths of a millimeter, of which an inch has 254. */
const METRIC: Readonly<Record<string, number>> = { mm: 1, cm: 2, m: 4 };
const TENTHS_PER_INCH = 254;

function parseFeetInches(text: string): number | null {
  const match = /^([\d ./-]+?) ?(?:'|ft\.?|foot|feet) ?(?:-? ?([\d ./-]+?) ?(?:"|inches|inch|in\.?)?)?$/i.exec(text);
  if (match === null) return null;
  const feet = parseFigure((match[1] ?? '').trim());
  if (feet === null) return null;
  if (match[2] === undefined) return feet * 12;
  const rest = parseFigure(match[2].trim());
  // Feet with a fraction and inches behind them, or a foot or more of inches, is a slip, not a length.
  if (rest === null || rest >= 12 || !Number.isInteger(feet)) return null;
  return feet * 12 + rest;
}

function parseUnsigned(text: string): number | null {
  const metric = /^([\d.]+) ?(mm|cm|m)$/i.exec(text);
  if (metric !== null) {
    return parseRatio(metric[1] ?? '', METRIC[(metric[2] ?? '').toLowerCase()] ?? NaN, TENTHS_PER_INCH);
  }
  const plain = /^([\d ./-]+?) ?(?:"|inches|inch|in\.?)?$/i.exec(text);
  return plain === null ? parseFeetInches(text) : parseFigure((plain[1] ?? '').trim());
}

/**
 * A length in inches from a number of inches or a text as the trade writes it: `12'-3 5/8"`, `10 ft`, `3 1/2 in`, `3500 mm`,
 * `60 cm`, `3.5 m`; a text without a unit is inches. Exact to 1/16 in; millimeters by 25.4 to the inch.
 * A sign in front is for the whole. Null for what is not a finite length.
 */
export function parseLength(value: string | number): Inches | null {
  if (typeof value === 'number') return Number.isFinite(value) ? inches(value + 0) : null;
  if (value.length > LONGEST_TEXT) return null;
  const text = tidyFigures(value);
  const sign = text.startsWith('-') ? -1 : 1;
  const length = parseUnsigned(text.replace(/^[-+] ?/, ''));
  if (length === null || !Number.isFinite(length)) return null;
  return inches(length === 0 ? 0 : sign * length);
}
