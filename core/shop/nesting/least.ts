/**
 * What no plan can undercut that lays its parts square to the sheet. Three ways to count, of which the greatest holds: the area of the
 * parts with half the spacing round each; parts of which no two share a sheet; parts that share a sheet with no other at all, a sheet
 * each, and the area of the rest.
 */
import { type Mold } from './mold.ts';
import { type SheetSize } from './types.ts';

/** A part for counting: an upright rectangle that it holds, and an area that it takes. */
export interface Core {
  readonly count: number;
  readonly wide: number;
  readonly high: number;
  /** With half the spacing round it. */
  readonly area: number;
}

export interface Least {
  readonly sheets: number;
  readonly stockArea: number;
}

/** The rectangle that a part surely holds: itself, what lies between the leaning ends of a four-cornered one, else none. */
export function coreOf({ molds: [mold], count }: { readonly molds: readonly Mold[]; readonly count: number }, spacing: number): Core {
  const { parts, width, height, area } = mold!;
  const corners = parts.length === 1 && parts[0]!.length === 4 ? parts[0]! : [];
  const foot = corners.filter(({ y }) => y === 0).map(({ x }) => x).toSorted((a, b) => a - b);
  const head = corners.filter(({ y }) => y !== 0).map(({ x }) => x).toSorted((a, b) => a - b);
  const level = corners.every(({ y }) => y === 0 || Math.abs(y - height) < 1e-9) && foot.length === 2 && head.length === 2;
  if (!level) return { count, wide: 0, high: 0, area };
  const wide = Math.max(0, Math.min(foot[1]!, head[1]!) - Math.max(foot[0]!, head[0]!));
  // A rectangle keeps half the spacing all round; of another only its own area is sure.
  return { count, wide, high: wide === 0 ? 0 : height, area: Math.abs(wide - width) < 1e-9 ? (width + spacing) * (height + spacing) : area };
}

export function leastStock(cores: readonly Core[], sizes: readonly SheetSize[], spacing: number): Least {
  if (cores.length === 0) return { sheets: 0, stockArea: 0 };
  const share = (one: Core, other: Core): boolean => sizes.some((size) => bothFit(one, other, size, spacing));
  const inOrder = cores.toSorted((a, b) => Math.min(b.wide, b.high) - Math.min(a.wide, a.high) || b.wide * b.high - a.wide * a.high);
  const alone = inOrder.filter((one) => isLoner(one, inOrder, share));
  const rest = inOrder.filter((one) => !alone.includes(one));
  const lonely = sum(alone.map((one) => costOf(one, sizes, one.count)));
  const area = areaLeast(inOrder, sizes, spacing);
  const mixed = areaLeast(rest, sizes, spacing);
  const group: Core[] = [];
  for (const one of inOrder) {
    if (group.some((other) => share(one, other))) continue;
    group.push(share(one, one) ? { ...one, count: 1 } : one);
  }
  const apart = sum(group.map((one) => costOf(one, sizes, one.count)));
  return {
    sheets: Math.max(area.sheets, apart.sheets, lonely.sheets + mixed.sheets),
    stockArea: Math.max(area.stockArea, apart.stockArea, lonely.stockArea + mixed.stockArea),
  };
}

/** A part that shares a sheet with none, its own like included. */
const isLoner = (one: Core, all: readonly Core[], share: (a: Core, b: Core) => boolean): boolean => all.every((other) => (other === one && one.count === 1) || !share(one, other));

const sum = (list: readonly Least[]): Least => list.reduce((a, b) => ({ sheets: a.sheets + b.sheets, stockArea: a.stockArea + b.stockArea }), { sheets: 0, stockArea: 0 });

/** So many parts on a sheet each, the smallest that holds one. */
function costOf(one: Core, sizes: readonly SheetSize[], count: number): Least {
  const areas = sizes.filter((size) => fits(one.wide, one.high, size)).map(({ long, short }) => long * short);
  return { sheets: count, stockArea: count * Math.min(...areas) };
}

/** Parts and sheets both grown by half the spacing all round: then parts need only not overlap. */
function areaLeast(cores: readonly Core[], sizes: readonly SheetSize[], spacing: number): Least {
  const total = cores.reduce((all, { count, area }) => all + count * area, 0) * (1 - ROUNDING);
  const holds = (size: SheetSize): number => (size.long + spacing) * (size.short + spacing);
  const sheets = Math.ceil(total / Math.max(...sizes.map(holds)));
  const [only] = sizes;
  // With one size whole sheets count; with several the least that one square inch of parts costs.
  if (sizes.length === 1) return { sheets, stockArea: sheets * only!.long * only!.short };
  return { sheets, stockArea: total * Math.min(...sizes.map((size) => (size.long * size.short) / holds(size))) };
}

/** So that rounding never lifts a bound over the truth. */
const ROUNDING = 1e-9;

const fits = (wide: number, high: number, { long, short }: SheetSize): boolean => (wide <= long + SLACK && high <= short + SLACK) || (high <= long + SLACK && wide <= short + SLACK);
const SLACK = 1e-6;

/** Two rectangles square to a sheet lie apart along x or along y: side by side one way in some turn of each. */
function bothFit(a: Core, b: Core, { long, short }: SheetSize, spacing: number): boolean {
  const turns = ({ wide, high }: Core): readonly (readonly [number, number])[] => [[wide, high], [high, wide]];
  return turns(a).some(([w, h]) => turns(b).some(([v, g]) =>
    (w + spacing + v <= long + SLACK && Math.max(h, g) <= short + SLACK) || (h + spacing + g <= short + SLACK && Math.max(w, v) <= long + SLACK)));
}
