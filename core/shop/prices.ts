/** What a person says that things cost. */
import { MM_PER_INCH, type Inches } from '../base/quantity.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';
import { type Brief } from '../brief/types.ts';
import { tidyName } from '../steel/index.ts';
import { parseLength } from '../units/index.ts';

type Prices = Brief['shop']['prices'];

/** A key that names one bar: `pipe 2 sch 40=24 ft`. */
function barOf(key: string): { readonly section: string; readonly length: Inches } | null {
  const at = key.lastIndexOf('=');
  const length = at < 0 ? null : parseLength(key.slice(at + 1).trim());
  return length === null ? null : { section: tidyName(key.slice(0, at)), length };
}

/** The price under a name, however it is spelled; null where there is none. */
export function priceNamed(prices: Prices, name: string): number | null {
  const tidy = tidyName(name);
  return Object.entries(prices).find(([key]) => tidyName(key) === tidy)?.[1] ?? null;
}

/** What one bar of a section costs: by its own length where that has a price, else by the foot or the meter; null: no price is known. */
export function priceOfBar({ shop: { prices }, units }: Pick<Brief, 'shop' | 'units'>, section: string, length: Inches): number | null {
  const tidy = tidyName(section);
  for (const [key, price] of Object.entries(prices)) {
    const bar = barOf(key);
    if (bar?.section === tidy && Math.abs(bar.length - length) <= SAME_LENGTH) return price;
  }
  const each = priceNamed(prices, section);
  return each === null ? null : each * (units === 'mm' ? (length * MM_PER_INCH) / 1000 : length / 12);
}

/** A key that prices a sheet: `12 ga=60 x 120` one of that size, `12 ga=lb` or `12 ga=kg` its weight. */
function sheetKey(key: string): { readonly section: string; readonly by: 'lb' | 'kg' | readonly [number, number] } | null {
  const at = key.lastIndexOf('=');
  if (at < 0) return null;
  const [section, by] = [tidyName(key.slice(0, at)), key.slice(at + 1).trim().toLowerCase()];
  if (by === 'lb' || by === 'kg') return { section, by };
  const [a, b, ...rest] = by.split(/\s*[x×]\s*/).map(parseLength);
  return a === undefined || a === null || b === undefined || b === null || rest.length > 0 ? null : { section, by: [Math.max(a, b), Math.min(a, b)] };
}

const POUNDS_PER_KILOGRAM = 1 / 0.45359237;

/**
 * What one stock sheet costs: by its own size where that has a price, else by its weight (`pounds`), else by the square foot or meter of
 * it; null: no price is known.
 */
export function priceOfSheet({ shop: { prices }, units }: Pick<Brief, 'shop' | 'units'>, section: string, { long, short }: { readonly long: Inches; readonly short: Inches }, pounds: number): number | null {
  const tidy = tidyName(section);
  const keyed = Object.entries(prices).flatMap(([key, price]) => {
    const sheet = sheetKey(key);
    return sheet?.section === tidy ? [{ by: sheet.by, price }] : [];
  });
  const own = keyed.find(({ by }) => typeof by !== 'string' && Math.abs(by[0] - long) <= SAME_LENGTH && Math.abs(by[1] - short) <= SAME_LENGTH);
  if (own !== undefined) return own.price;
  const weighed = keyed.find(({ by }) => typeof by === 'string');
  if (weighed !== undefined) return weighed.price * (weighed.by === 'kg' ? pounds / POUNDS_PER_KILOGRAM : pounds);
  const each = priceNamed(prices, section);
  return each === null ? null : each * (units === 'mm' ? (long * short * MM_PER_INCH ** 2) / 1e6 : (long * short) / 144);
}

/** Names of prices that are none of `names`, nor of one bar, one sheet or the weight of a section among them. */
export const unusedPrices = (prices: Prices, names: ReadonlySet<string>): readonly string[] => {
  const tidy = new Set([...names].map(tidyName));
  return Object.keys(prices).filter((key) => !tidy.has(tidyName(key)) && !tidy.has(barOf(key)?.section ?? '') && !tidy.has(sheetKey(key)?.section ?? ''));
};
