/** Tries a drafted thing against what stands on the paper already, and settles it there. */
import { type Vec } from '../base/points.ts';
import { NOISE, TEXT_CLEAR } from '../base/tolerance.ts';
import { type Rect, boxBounds, boxesMeet, growBox, segmentMeetsBox, textBox } from './boxes.ts';
import { type Kit, type TextStroke, boxOf } from './kit.ts';
import { type Occupancy } from './occupancy.ts';
import { type Stroke } from './primitives.ts';
import { segmentsOf } from './strokes.ts';

const textsOf = (strokes: readonly Stroke[]): TextStroke[] => strokes.filter((stroke) => stroke.kind === 'text');

const inRoom = (p: Vec, room: Rect): boolean =>
  p.x >= room.x - NOISE && p.y >= room.y - NOISE && p.x <= room.x + room.width + NOISE && p.y <= room.y + room.height + NOISE;

/**
 * How badly a group of strokes would stand: null where it may not (a text touched, a line through a text, a text or line outside `room`), else
 * the lines of steel under its texts and the lines that it crosses.
 */
export function costOf(kit: Kit, occupancy: Occupancy, strokes: readonly Stroke[], room: Rect): number | null {
  const texts = textsOf(strokes);
  const segments = segmentsOf(strokes);
  let cost = 0;
  for (const [i, text] of texts.entries()) {
    const box = boxOf(kit, text);
    const bounds = boxBounds(box);
    if (bounds.x < room.x || bounds.y < room.y) return null;
    if (bounds.x + bounds.width > room.x + room.width || bounds.y + bounds.height > room.y + room.height) return null;
    if (occupancy.blocked(box)) return null;
    const own = textBox(kit.font, text, TEXT_CLEAR);
    if (segments.some((segment) => segmentMeetsBox(segment, own))) return null;
    if (texts.some((other, j) => j < i && boxesMeet(box, boxOf(kit, other)))) return null;
    cost += 3 * occupancy.steelUnder(growBox(box, -kit.clear));
  }
  for (const segment of segments) {
    if (!inRoom(segment.a, room) || !inRoom(segment.b, room) || occupancy.crossesText(segment)) return null;
    cost += occupancy.linesCrossed(segment);
  }
  return cost;
}

/** Makes strokes part of what stands: nothing may touch their texts, no text their lines. */
export function settle(kit: Kit, occupancy: Occupancy, strokes: readonly Stroke[]): void {
  for (const text of textsOf(strokes)) occupancy.addBox(boxOf(kit, text));
  for (const segment of segmentsOf(strokes)) occupancy.addLine(segment);
}

/** The best of some candidates (the first with no cost, else the cheapest); null where none may stand. */
export function bestOf<T extends { readonly strokes: readonly Stroke[] }>(
  kit: Kit,
  occupancy: Occupancy,
  candidates: Iterable<T>,
  room: Rect,
): T | null {
  let best: { readonly item: T; readonly cost: number } | null = null;
  let order = 0;
  for (const item of candidates) {
    const cost = costOf(kit, occupancy, item.strokes, room);
    // A later candidate lies farther off: it must be clearly better.
    const total = cost === null ? null : cost + order * 0.06;
    order += 1;
    if (cost === 0) {
      if (best === null || best.cost > total!) return item;
      return best.item;
    }
    if (total !== null && (best === null || total < best.cost)) best = { item, cost: total };
  }
  return best === null ? null : best.item;
}

