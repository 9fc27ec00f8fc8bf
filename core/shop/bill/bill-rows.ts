import { MM_PER_INCH } from '../../base/quantity.ts';
import { type Brief } from '../../brief/types.ts';
import { isBar, type Parts } from '../../parts/index.ts';
import { type MaterialLine } from '../../schedules/index.ts';
import { type CutList } from '../cut-list/index.ts';
import { say } from '../../text/index.ts';
import { type ShopPlates } from '../nesting/index.ts';
import { priceNamed } from '../prices.ts';
import { type BillRow } from './bill-row.ts';
import { coatedArea } from './coated-area.ts';
import { sheetRows } from './sheet-rows.ts';

/**
 * The bill: what the facility is made of, the bars and sheets to buy for it once their cuts and nests are planned, and the area to coat.
 * Posts are set in premixed bags where these have a price, else in concrete by the yard: only one of the two is priced.
 */
export function billRows(brief: Brief, parts: Parts, lines: readonly MaterialLine[], cuts: CutList | null, plates: ShopPlates | null): readonly BillRow[] {
  const { prices } = brief.shop;
  const priced = (row: Omit<BillRow, 'price' | 'unitPrice'>, unitPrice: number | null): BillRow =>
    ({ ...row, unitPrice, price: unitPrice === null ? null : unitPrice * row.quantity });
  const bags = pricedPremix(brief, lines);
  const nested = new Set(plates?.plates.map(({ section }) => section) ?? []);
  const net = lines.map(({ item, section, quantity, unit, weight, pieces }) => {
    const row = { item, section, quantity, unit, weight, pieces, stockLength: null, stockWidth: null, boughtWeight: null };
    // Bars and sheets are priced as they are bought.
    const bought = unit === 'ft' || unit === 'm' || (nested.has(section) && (unit === 'ft2' || unit === 'm2'));
    return priced(row, bought || (bags !== null && item === 'concrete' && section === say('schedules.postHoles')) ? null : priceNamed(prices, section) ?? priceNamed(prices, item));
  });
  return [...net, ...(cuts === null ? [] : barRows(parts, cuts)), ...(plates === null ? [] : sheetRows(brief, plates)), ...coatRows(brief, parts, priced)];
}

/** What a bag of premixed concrete costs where the bill has such bags; null: posts are priced by concrete. */
export function pricedPremix({ shop: { prices } }: Pick<Brief, 'shop'>, lines: readonly Pick<BillRow, 'item' | 'section'>[]): number | null {
  const premix = lines.find(({ item }) => item === 'premix');
  return premix === undefined ? null : priceNamed(prices, premix.section) ?? priceNamed(prices, premix.item);
}

function barRows(parts: Parts, cuts: CutList): readonly BillRow[] {
  const perInch = weightsPerInch(parts);
  return cuts.flatMap(({ section, bars }) => {
    const rows = new Map<string, BillRow>();
    for (const { stock } of bars) {
      const item = stock.count === null ? 'bar' : 'rack-bar';
      const key = `${item} ${String(stock.length)} ${String(stock.price)}`;
      const quantity = (rows.get(key)?.quantity ?? 0) + 1;
      const weight = perInch.get(section);
      rows.set(key, {
        item, section, quantity, unit: 'each', weight: null, pieces: quantity, stockLength: stock.length, stockWidth: null,
        boughtWeight: weight === undefined ? null : weight * stock.length * quantity,
        unitPrice: stock.price, price: stock.price === null ? null : stock.price * quantity,
      });
    }
    return [...rows.values()];
  });
}

/** Plain-end weight of an inch of each section, from a piece of it that is cut square where there is one. */
function weightsPerInch(parts: Parts): ReadonlyMap<string, number> {
  const found = new Map<string, { readonly square: boolean; readonly weight: number }>();
  for (const piece of parts.pieces) {
    if (!isBar(piece) || found.get(piece.section)?.square === true) continue;
    const mean = (piece.length + (piece.lengthShort ?? piece.length)) / 2;
    found.set(piece.section, { square: piece.lengthShort === null, weight: piece.weight / mean });
  }
  return new Map([...found].map(([section, { weight }]) => [section, weight]));
}

const COATS = { paint: 'paint', galvanized: 'galvanizing', bare: null } as const;

function coatRows(brief: Brief, parts: Parts, priced: (row: Omit<BillRow, 'price' | 'unitPrice'>, unitPrice: number | null) => BillRow): readonly BillRow[] {
  const item = COATS[brief.shop.coating];
  if (item === null) return [];
  const { area, pieces } = coatedArea(brief, parts);
  const metric = brief.units === 'mm';
  const row = {
    item, section: '', quantity: metric ? area * (MM_PER_INCH / 1000) ** 2 : area / 144, unit: metric ? 'm2' : 'ft2', weight: null, pieces, stockLength: null, stockWidth: null, boughtWeight: null,
  };
  return [priced(row, priceNamed(brief.shop.prices, item))];
}
