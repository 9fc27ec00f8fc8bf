import { type Vec } from '../base/points.ts';
import { type Rect } from '../drafting/boxes.ts';

/** The part of a line inside a rectangle; null where there is none (Liang and Barsky). */
export function clipLine(a: Vec, b: Vec, { x, y, width, height }: Rect): readonly [Vec, Vec] | null {
  const way = { x: b.x - a.x, y: b.y - a.y };
  let [from, to] = [0, 1];
  const edges: readonly (readonly [number, number])[] = [
    [-way.x, a.x - x], [way.x, x + width - a.x], [-way.y, a.y - y], [way.y, y + height - a.y],
  ];
  for (const [out, room] of edges) {
    if (out === 0) {
      if (room < 0) return null;
    } else if (out < 0) from = Math.max(from, room / out);
    else to = Math.min(to, room / out);
  }
  return from >= to ? null : [{ x: a.x + way.x * from, y: a.y + way.y * from }, { x: a.x + way.x * to, y: a.y + way.y * to }];
}
