import { MM_PER_INCH, type Inches } from '../../base/quantity.ts';
import { type Brief } from '../../brief/types.ts';
import { isBar, type Parts } from '../../parts/index.ts';
import { type MaterialLine } from '../../schedules/index.ts';
import { type CutList } from '../cut-list/index.ts';
import { priceNamed } from '../prices.ts';
import { coatedArea } from './coated-area.ts';

/** A row of the bill. */
export interface BillRow {
  /** What it is: a kind of piece net of waste, `bar` and `rack-bar` as bought or taken from the rack, a bought part, concrete, paint. */
  readonly item: string;
  readonly section: string;
  readonly quantity: number;
  readonly unit: string;
  /** Net of the pieces as trimmed; null where the row is no net weight. */
  readonly weight: number | null;
  /** Of the whole row; null where no price is known, or where what is bought for it is a row of its own. */
  readonly price: number | null;
  readonly pieces: number;
  readonly unitPrice: number | null;
  /** Bars: length of one. */
  readonly stockLength: Inches | null;
  /** Bars: weight as bought, plain end. */
  readonly boughtWeight: number | null;
}

/** The bill: what the facility is made of, the bars to buy for it once their cuts are planned, and the area to coat. */
export function billRows(brief: Brief, parts: Parts, lines: readonly MaterialLine[], cuts: CutList | null): readonly BillRow[] {
  const { prices } = brief.shop;
  const priced = (row: Omit<BillRow, 'price' | 'unitPrice'>, unitPrice: number | null): BillRow =>
    ({ ...row, unitPrice, price: unitPrice === null ? null : unitPrice * row.quantity });
  const net = lines.map(({ item, section, quantity, unit, weight, pieces }) => {
    const row = { item, section, quantity, unit, weight, pieces, stockLength: null, boughtWeight: null };
    // Bars are priced as they are bought.
    return priced(row, unit === 'ft' || unit === 'm' ? null : priceNamed(prices, section) ?? priceNamed(prices, item));
  });
  return [...net, ...(cuts === null ? [] : barRows(parts, cuts)), ...coatRows(brief, parts, priced)];
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
        item, section, quantity, unit: 'each', weight: null, pieces: quantity, stockLength: stock.length,
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
    item, section: '', quantity: metric ? area * (MM_PER_INCH / 1000) ** 2 : area / 144, unit: metric ? 'm2' : 'ft2', weight: null, pieces, stockLength: null, boughtWeight: null,
  };
  return [priced(row, priceNamed(brief.shop.prices, item))];
}
