/** Parts on a strip of one width, as short as can be: what a roll of sheet is, and how the nesting is measured against known sets. */
import { fillSheet, type Laid, type Pile } from './fill-sheet.ts';
import { makeSpacer } from './floor.ts';
import { figures, ORDERS } from './orders.ts';

export interface StripNest {
  readonly laid: readonly Laid[];
  readonly length: number;
}

const lengthOf = (laid: readonly Laid[]): number => Math.max(0, ...laid.map(({ mold, at }) => at.x + mold.width));

/**
 * The shortest strip found in so many tries: the plain orders first, then the best order so far with two of its places exchanged.
 * Every part lies on it; throws where one is wider than the strip.
 */
export function nestStrip(piles: readonly Pile[], width: number, spacing: number, tries: number, seed = 1): StripNest {
  const spacer = makeSpacer(spacing);
  const total = piles.reduce((sum, { molds, count }) => sum + count * Math.min(...molds.map((mold) => mold.width)), 0);
  const wanted = piles.reduce((sum, { count }) => sum + count, 0);
  const lay = (singles: readonly Pile[]): StripNest => {
    const laid = fillSheet(total + 1, width, singles, spacer);
    if (laid.length !== wanted) throw new Error(`${String(wanted - laid.length)} parts do not go on a strip ${String(width)} wide`);
    return { laid, length: lengthOf(laid) };
  };
  const singly = (list: readonly Pile[]): readonly Pile[] => list.flatMap(({ molds, count }) => Array.from({ length: count }, () => ({ molds, count: 1 })));
  const next = figures(seed);
  let best: { readonly order: readonly Pile[]; readonly nest: StripNest } | null = null;
  for (let i = 0; i < tries; i++) {
    const order: readonly Pile[] = i < ORDERS.length || best === null ? singly(piles.toSorted(ORDERS[i % ORDERS.length])) : exchanged(best.order, next);
    const nest = lay(order);
    if (best === null || nest.length <= best.nest.length) best = { order, nest };
  }
  return best?.nest ?? { laid: [], length: 0 };
}

function exchanged(order: readonly Pile[], next: () => number): readonly Pile[] {
  const out = [...order];
  const from = Math.floor(next() * out.length);
  const others = out.flatMap(({ molds }, i) => (molds === out[from]!.molds ? [] : [i]));
  if (others.length === 0) return out;
  const to = others[Math.floor(next() * others.length)]!;
  [out[from], out[to]] = [out[to]!, out[from]!];
  return out;
}
