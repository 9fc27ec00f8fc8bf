/** Tries a drafted thing against what stands on the paper already, and settles it there. */
import { NOISE, TEXT_CLEAR } from '../base/tolerance.ts';
import { type Rect, type TurnedBox, boxBounds, boxesMeet, growBox, lineMeetsBox, textBox } from './boxes.ts';
import { type Kit, type TextStroke, boxOf } from './kit.ts';
import { type Occupancy } from './occupancy.ts';
import { type Stroke } from './primitives.ts';
import { segmentsOf } from './strokes.ts';

const textsOf = (strokes: readonly Stroke[]): TextStroke[] => strokes.filter((stroke) => stroke.kind === 'text');

const inRoom = (x: number, y: number, room: Rect): boolean =>
  x >= room.x - NOISE && y >= room.y - NOISE && x <= room.x + room.width + NOISE && y <= room.y + room.height + NOISE;

/**
 * How badly a group of strokes would stand: null where it may not (a text touched, a line through a text, a text or line outside `room`), else
 * the lines of steel under its texts and the lines that it crosses. Null too once it comes to `most`: what is worse need not be counted.
 */
export function costOf(kit: Kit, occupancy: Occupancy, strokes: readonly Stroke[], room: Rect, most = Infinity): number | null {
  const texts = textsOf(strokes);
  const boxes: TurnedBox[] = [];
  for (const text of texts) {
    const box = boxOf(kit, text);
    const bounds = boxBounds(box);
    if (bounds.x < room.x || bounds.y < room.y) return null;
    if (bounds.x + bounds.width > room.x + room.width || bounds.y + bounds.height > room.y + room.height) return null;
    if (occupancy.blocked(box)) return null;
    for (const other of boxes) if (boxesMeet(box, other)) return null;
    boxes.push(box);
  }
  const ends = segmentsOf(strokes);
  for (let i = 0; i < ends.length; i += 2) if (!inRoom(ends[i]!, ends[i + 1]!, room)) return null;
  for (const text of texts) {
    const own = textBox(kit.font, text, TEXT_CLEAR);
    for (let i = 0; i < ends.length; i += 4) if (lineMeetsBox(ends[i]!, ends[i + 1]!, ends[i + 2]!, ends[i + 3]!, own)) return null;
  }
  for (let i = 0; i < ends.length; i += 4) if (occupancy.crossesText(ends[i]!, ends[i + 1]!, ends[i + 2]!, ends[i + 3]!)) return null;
  let cost = 0;
  for (const box of boxes) cost += 3 * occupancy.steelUnder(growBox(box, -kit.clear));
  for (let i = 0; i < ends.length && cost < most; i += 4) cost += occupancy.linesCrossed(ends[i]!, ends[i + 1]!, ends[i + 2]!, ends[i + 3]!);
  return cost >= most ? null : cost;
}

/** Makes strokes part of what stands: nothing may touch their texts, no text their lines. */
export function settle(kit: Kit, occupancy: Occupancy, strokes: readonly Stroke[]): void {
  for (const text of textsOf(strokes)) occupancy.addBox(boxOf(kit, text));
  const ends = segmentsOf(strokes);
  for (let i = 0; i < ends.length; i += 4) occupancy.addLine(ends[i]!, ends[i + 1]!, ends[i + 2]!, ends[i + 3]!);
}

/**
 * The best of some candidates (the first with no cost, else the cheapest); null where none may stand. `body`: what of it would rather lie
 * on no steel, beside its texts.
 */
export function bestOf<T extends { readonly strokes: readonly Stroke[]; readonly body?: readonly TurnedBox[] }>(
  kit: Kit,
  occupancy: Occupancy,
  candidates: Iterable<T>,
  room: Rect,
): T | null {
  let best: { readonly item: T; readonly cost: number } | null = null;
  let order = 0;
  for (const item of candidates) {
    // A later candidate lies farther off: it must be clearly better, and from some way off none can be.
    const farther = order * 0.06;
    order += 1;
    if (best !== null && farther >= best.cost) return best.item;
    const own = costOf(kit, occupancy, item.strokes, room, best === null ? Infinity : best.cost - farther);
    const cost = own === null || item.body === undefined ? own : own + item.body.reduce((sum, box) => sum + occupancy.steelUnder(box), 0);
    if (best !== null && cost !== null && cost >= best.cost - farther) continue;
    if (cost === 0) return item;
    if (cost !== null) best = { item, cost: cost + farther };
  }
  return best === null ? null : best.item;
}
