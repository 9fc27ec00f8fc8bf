/** What does not hold of a project's cut list, worked out anew from its pieces and its bars. */
import { type Brief } from '../../core/brief/types.ts';
import { type Parts } from '../../core/parts/index.ts';
import { type BarPlan, type CutList } from '../../core/shop/cut-list/index.ts';

/** Cutting counts in ten-thousandths of an inch. */
const STEP = 1e-4;

export function cutBreaches(brief: Brief, parts: Parts, list: CutList): string[] {
  const out: string[] = [];
  const needed = new Map<string, { length: number; count: number }>();
  for (const piece of parts.pieces) {
    // Sheet has a height; what is bent of the rest goes through the rolls, which hold it at both ends.
    if (piece.flatHeight !== null) continue;
    const length = piece.length + (piece.bend === null ? 0 : 2 * brief.shop.grip);
    const key = `${piece.section} ${piece.mark}`;
    needed.set(key, { length, count: (needed.get(key)?.count ?? 0) + 1 });
  }
  for (const { section, bars, atLeast } of list) {
    if (bars.length < atLeast) out.push(`${section}: ${String(bars.length)} bars, and at least ${String(atLeast)}`);
    const rack = (brief.shop.rack[section] ?? []).reduce((sum, { count }) => sum + count, 0);
    if (bars.filter(({ stock }) => stock.count !== null).length > rack) out.push(`${section}: more from the rack than stand on it`);
    bars.forEach((bar, index) => {
      const where = `${section}, bar ${String(index + 1)}`;
      out.push(...barBreaches(brief, bar).map((breach) => `${where}: ${breach}`));
      for (const { mark, length } of bar.cuts) {
        const need = needed.get(`${section} ${mark}`);
        if (need === undefined) out.push(`${where}: ${mark} is no piece of it`);
        else {
          if (Math.abs(need.length - length) > STEP / 2 + 1e-9) out.push(`${where}: ${mark} is ${String(length)}, not ${String(need.length)}`);
          need.count -= 1;
        }
      }
    });
  }
  for (const [key, { count }] of needed) if (count !== 0) out.push(`${key}: ${String(count)} too few`);
  return out;
}

function barBreaches(brief: Brief, { stock, trim, cuts, drop }: BarPlan): string[] {
  const out: string[] = [];
  const pieces = cuts.reduce((sum, { length }) => sum + length, 0);
  const kerfs = cuts.reduce((sum, { kerf }) => sum + kerf, 0);
  // Stock in millimeters is no whole number of steps.
  if (Math.abs(trim + pieces + kerfs + drop - stock.length) > 2 * STEP) out.push('trim, pieces, kerf and drop are not the bar');
  if (drop < 0 || cuts.length === 0) out.push('overfull or empty');
  if (cuts.slice(0, -1).some(({ kerf }) => Math.abs(kerf - brief.shop.kerf) > STEP)) out.push('a cut without its kerf');
  return out;
}
