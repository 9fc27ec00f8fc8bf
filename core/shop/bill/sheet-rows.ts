/** The stock sheets of the nests, as they are bought. */
import { type Inches } from '../../base/quantity.ts';
import { type Brief } from '../../brief/types.ts';
import { parseSheet } from '../../steel/index.ts';
import { type ShopPlates } from '../nesting/index.ts';
import { priceOfSheet } from '../prices.ts';
import { type BillRow } from './bill-row.ts';

/** A row for each size of each thickness; a sheet that holds plates called by several names is priced by the first that has a price. */
export function sheetRows(brief: Brief, { plates, nests }: ShopPlates): readonly BillRow[] {
  return nests.flatMap(({ section, thickness, sheets }) => {
    const names = [section, ...new Set(plates.filter((plate) => plate.thickness === thickness && plate.section !== section).map((plate) => plate.section))];
    const perArea = parseSheet(section)?.weightPerArea ?? 0;
    const sizes = new Map<string, { readonly long: Inches; readonly short: Inches; count: number }>();
    for (const { size, count } of sheets) {
      const key = `${String(size.long)} ${String(size.short)}`;
      const known = sizes.get(key);
      if (known === undefined) sizes.set(key, { ...size, count });
      else known.count += count;
    }
    return [...sizes.values()].map(({ long, short, count }): BillRow => {
      const each = perArea * long * short;
      const price = names.map((name) => priceOfSheet(brief, name, { long, short }, each)).find((one) => one !== null) ?? null;
      return {
        item: 'sheet', section, quantity: count, unit: 'each', weight: null, pieces: count, stockLength: long, stockWidth: short,
        boughtWeight: each * count, unitPrice: price, price: price === null ? null : price * count,
      };
    });
  });
}
