import { contourBox } from '../../base/flat-curves.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Turn } from '../plates/move-shape.ts';
import { fillSheet, type Laid, type Pile } from './fill-sheet.ts';
import { makeSpacer, type Spacer } from './floor.ts';
import { coreOf, leastStock } from './least.ts';
import { moldsOf, type Guest } from './mold.ts';
import { ORDERS } from './orders.ts';
import { type Nest, type NestedSheet, type NestPart, type SheetSize } from './types.ts';

/** Sheets filled in one plan beyond which each is filled in one order alone: effort is bounded by counts, never by the clock. */
const MOST_FILLS = 400;

/**
 * Lays parts on stock sheets, `spacing` apart, square to the sheet: sheet by sheet the fullest that any size and order gives, then the
 * plans of each order alone; the one that takes the least stock stands. The same parts give the same plan.
 */
export function nestParts(parts: readonly NestPart[], sizes: readonly SheetSize[], spacing: number): Nest {
  const guests = parts.map(({ shape }): Guest => {
    const { left, right, low, high } = contourBox(shape.outer);
    const sides = [right - left + 2 * spacing, high - low + 2 * spacing] as const;
    return [Math.min(...sides), Math.max(...sides)];
  });
  const piles = parts.map((part) => ({ part, pile: { molds: moldsOf(part.id, part.shape, turnsOf(part, sizes), guests), count: part.quantity } }));
  const holds = ({ molds }: Pile): boolean => molds.some((mold) => sizes.some((size) => mold.width <= size.long + SAME_LENGTH && mold.height <= size.short + SAME_LENGTH));
  const laid = piles.filter(({ pile }) => holds(pile)).map(({ pile }) => pile);
  const bound = leastStock(laid.map((pile) => coreOf(pile, spacing)), sizes, spacing);
  const spacer = makeSpacer(spacing);
  let best: readonly NestedSheet[] | null = null;
  for (const orders of [ORDERS, ...ORDERS.map((order) => [order])]) {
    const sheets = planOf(laid, sizes, orders, spacing, spacer);
    if (best === null || stockOf(sheets) < stockOf(best) - SAME_LENGTH) best = sheets;
    if (stockOf(best) <= bound.stockArea + SAME_LENGTH || sheets.length * sizes.length > MOST_FILLS) break;
  }
  return {
    sheets: best ?? [],
    left: piles.filter(({ pile }) => !holds(pile)).map(({ part }) => part),
    partArea: laid.reduce((sum, { molds, count }) => sum + molds[0]!.area * count, 0),
    stockArea: stockOf(best ?? []),
    least: bound,
  };
}

const areaOf = ({ long, short }: SheetSize): number => long * short;
const stockOf = (sheets: readonly NestedSheet[]): number => sheets.reduce((sum, { size, count }) => sum + areaOf(size) * count, 0);

/** What is held along the sheet is turned half round only, unless no sheet holds it so. */
function turnsOf({ shape, along }: NestPart, sizes: readonly SheetSize[]): readonly Turn[] {
  const { left, right, low, high } = contourBox(shape.outer);
  if (!along) return [0, 1, 2, 3];
  return sizes.some(({ long, short }) => right - left <= long + SAME_LENGTH && high - low <= short + SAME_LENGTH) ? [0, 2] : [1, 3];
}

function planOf(piles: readonly Pile[], sizes: readonly SheetSize[], orders: readonly ((a: Pile, b: Pile) => number)[], spacing: number, spacer: Spacer): readonly NestedSheet[] {
  const sheets: NestedSheet[] = [];
  let left = piles;
  while (left.length > 0) {
    const tried = orders.length > 1 && sheets.length * sizes.length * orders.length > MOST_FILLS ? orders.slice(0, 1) : orders;
    const { size, laid } = fullest(left, sizes, tried, spacer);
    const took = new Map<string, number>();
    for (const { mold } of laid) took.set(mold.id, (took.get(mold.id) ?? 0) + 1);
    const count = Math.min(...left.flatMap(({ molds, count: have }) => {
      const each = took.get(molds[0]!.id);
      return each === undefined ? [] : [Math.floor(have / each)];
    }));
    sheets.push(sheetOf(size, laid, count, spacing));
    left = left.map((pile) => ({ ...pile, count: pile.count - count * (took.get(pile.molds[0]!.id) ?? 0) })).filter((pile) => pile.count > 0);
  }
  return sheets;
}

/** The sheet that the parts fill best, of every size and order; each begins with the order's first part that the size holds. */
function fullest(piles: readonly Pile[], sizes: readonly SheetSize[], orders: readonly ((a: Pile, b: Pile) => number)[], spacer: Spacer): { readonly size: SheetSize; readonly laid: readonly Laid[] } {
  let best: { readonly size: SheetSize; readonly laid: readonly Laid[]; readonly full: number } | null = null;
  for (const order of orders) {
    const inOrder = piles.toSorted(order);
    for (const size of sizes) {
      const laid = fillSheet(size.long, size.short, inOrder, spacer);
      const full = laid.reduce((sum, { mold }) => sum + mold.area, 0) / areaOf(size);
      if (best === null || full > best.full) best = { size, laid, full };
    }
  }
  if (best === null || best.laid.length === 0) throw new Error('parts that no sheet holds');
  return best;
}

/** Moved in from the sheet's edges by up to the spacing where there is room: they are not always straight. */
function sheetOf(size: SheetSize, laid: readonly Laid[], count: number, spacing: number): NestedSheet {
  const spare = (room: number, used: number): number => Math.max(0, Math.min(spacing, (room - used) / 2));
  const x = spare(size.long, Math.max(...laid.map(({ mold, at }) => at.x + mold.width)));
  const y = spare(size.short, Math.max(...laid.map(({ mold, at }) => at.y + mold.height)));
  return {
    size,
    count,
    parts: laid.map(({ mold, at }) => ({ id: mold.id, turn: mold.turn, at: { x: at.x + mold.shift.x + x, y: at.y + mold.shift.y + y } })),
    utilization: laid.reduce((sum, { mold }) => sum + mold.area, 0) / areaOf(size),
  };
}
