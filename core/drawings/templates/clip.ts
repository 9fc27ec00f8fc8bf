import { type Vec } from '../../base/points.ts';

export interface Shown {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** The part of a straight line that lies in what a page shows, its border included; null where none does. */
export function clipLine(a: Vec, b: Vec, { left, right, bottom, top }: Shown): { readonly a: Vec; readonly b: Vec } | null {
  let [from, to] = [0, 1];
  const sides = [[a.x - b.x, a.x - left], [b.x - a.x, right - a.x], [a.y - b.y, a.y - bottom], [b.y - a.y, top - a.y]] as const;
  for (const [toward, room] of sides) {
    if (toward === 0 && room < 0) return null;
    // Outward bound a line leaves at this share of its way, inward bound it comes in.
    if (toward > 0) to = Math.min(to, room / toward);
    if (toward < 0) from = Math.max(from, room / toward);
  }
  if (from > to || (from === to && (a.x !== b.x || a.y !== b.y))) return null;
  const at = (f: number): Vec => ({ x: a.x + (b.x - a.x) * f, y: a.y + (b.y - a.y) * f });
  return { a: from === 0 ? a : at(from), b: to === 1 ? b : at(to) };
}
