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

/** Names of prices that are none of `names`, nor of one bar of a section among them. */
export const unusedPrices = (prices: Prices, names: ReadonlySet<string>): readonly string[] => {
  const tidy = new Set([...names].map(tidyName));
  return Object.keys(prices).filter((key) => !tidy.has(tidyName(key)) && !tidy.has(barOf(key)?.section ?? ''));
};
