import { pounds, type Pounds } from '../../base/quantity.ts';
import { type Brief } from '../../brief/types.ts';
import { type Layout } from '../../layout/index.ts';
import { type Parts } from '../../parts/index.ts';
import { STEEL_DENSITY } from '../../steel/index.ts';
import { figure, length, text, type Column, type Units } from '../column.ts';
import { capWelds } from './cap-welds.ts';
import { catwalkWelds } from './catwalk-welds.ts';
import { fenceWelds } from './fence-welds.ts';
import { gateWelds } from './gate-welds.ts';
import { type Weld, type WeldLot } from './types.ts';

/** Welds alike in joint and symbol, over the whole facility. */
export interface WeldRow {
  readonly weld: Weld;
  readonly count: number;
  /** As laid, inches. */
  readonly length: number;
  /** Weld metal laid, and filler to buy for it at the shop's deposition. */
  readonly metal: Pounds;
  readonly filler: Pounds;
}

/** Every weld between pieces, in the order of the walk within each kind. */
export const weldLots = (brief: Brief, layout: Layout, parts: Parts): readonly WeldLot[] =>
  [...fenceWelds(brief, layout, parts), ...capWelds(brief, layout, parts), ...gateWelds(brief, layout, parts), ...catwalkWelds(brief, layout, parts)].filter(({ count }) => count > 0);

/** The weld list: filler is volume by the density of steel over the share of it that ends up in the weld. */
export function weldRows(brief: Brief, layout: Layout, parts: Parts): readonly WeldRow[] {
  const rows = new Map<string, WeldLot>();
  for (const lot of weldLots(brief, layout, parts)) {
    const key = JSON.stringify(lot.weld);
    const row = rows.get(key);
    rows.set(key, row === undefined ? lot : { ...row, count: row.count + lot.count, length: row.length + lot.length, volume: row.volume + lot.volume });
  }
  return [...rows.values()].map(({ weld, count, length: laid, volume }) => {
    const metal = volume * STEEL_DENSITY;
    return { weld, count, length: laid, metal: pounds(metal), filler: pounds(metal / brief.shop.welds.efficiency) };
  });
}

/** Columns of `welds.csv`. */
export function weldColumns(units: Units): readonly Column<WeldRow>[] {
  const size = length(units);
  return [
    text('joint', ({ weld }) => weld.joint),
    text('weld', ({ weld }) => weld.symbol.arrow?.kind ?? null),
    size('size', ({ weld }) => weld.symbol.arrow?.size ?? null),
    size('stitch_length', ({ weld }) => weld.symbol.arrow?.length ?? null),
    size('stitch_pitch', ({ weld }) => weld.symbol.arrow?.pitch ?? null),
    text('both_sides', ({ weld }) => (weld.symbol.other === null ? 'no' : 'yes')),
    text('all_round', ({ weld }) => (weld.symbol.allRound ? 'yes' : 'no')),
    text('where', ({ weld }) => (weld.symbol.field ? 'field' : 'shop')),
    size('thinner_part', ({ weld }) => weld.thinner),
    figure('integer', 'count', ({ count }) => count),
    size('length', (row) => row.length),
    figure('weight', 'weld_metal_lb', ({ metal }) => metal),
    figure('weight', 'filler_lb', ({ filler }) => filler),
  ];
}
