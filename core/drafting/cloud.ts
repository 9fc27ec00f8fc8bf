/** A cloud round what a revision changed, and the triangle with the revision's letter beside it. */
import { inches, radians } from '../base/quantity.ts';
import { type Vec, add, angleOf, leftOf, scale, sub } from '../base/points.ts';
import { type Rect } from './boxes.ts';
import { type Kit, PENS, makeText, measureText } from './kit.ts';
import { type Stroke } from './primitives.ts';
import { lineStroke, toSheet } from './strokes.ts';

/** Chord of a scallop, paper inches, and half the angle that it turns. */
const CHORD = 0.28;
const HALF = 0.93;
/** How far a scallop stands out from its chord. */
export const BULGE = (CHORD * Math.tan(HALF / 2)) / 2;
/** A side that has no room where it is tried is tried so much farther out. */
const STEP = 0.08;

export interface CloudPlace {
  readonly strokes: readonly Stroke[];
  readonly rect: Rect;
}

/**
 * The cloud that lies closest round `rect`: a side whose scallops would touch a text (`isClear` says) moves out, as far as `room`. Null
 * where one finds no place there.
 */
export function fitCloud(kit: Kit, rect: Rect, room: Rect, isClear: (strokes: readonly Stroke[]) => boolean): CloudPlace | null {
  const most = { left: room.x, low: room.y, right: room.x + room.width, high: room.y + room.height };
  const margin = 1.2 * kit.h;
  let left = Math.max(most.left, rect.x - margin);
  let low = Math.max(most.low, rect.y - margin);
  let right = Math.min(most.right, rect.x + rect.width + margin);
  let high = Math.min(most.high, rect.y + rect.height + margin);
  for (;;) {
    const sides = cloudSides({ x: left, y: low, width: right - left, height: high - low });
    const blocked = sides.map((strokes) => !isClear(strokes));
    if (!blocked.includes(true)) return { strokes: sides.flat(), rect: { x: left, y: low, width: right - left, height: high - low } };
    const before = [low, right, high, left];
    if (blocked[0] === true) low = Math.max(most.low, low - STEP);
    if (blocked[1] === true) right = Math.min(most.right, right + STEP);
    if (blocked[2] === true) high = Math.min(most.high, high + STEP);
    if (blocked[3] === true) left = Math.max(most.left, left - STEP);
    // Only sides that can move no farther are blocked still: another's end may lie in a text, so all of them move.
    if ([low, right, high, left].every((value, i) => value === before[i])) {
      if (low === most.low && right === most.right && high === most.high && left === most.left) return null;
      low = Math.max(most.low, low - STEP);
      right = Math.min(most.right, right + STEP);
      high = Math.min(most.high, high + STEP);
      left = Math.max(most.left, left - STEP);
    }
  }
}

/** Scallops outward along the foot, the right, the top and the left of a rectangle. */
function cloudSides({ x, y, width, height }: Rect): readonly (readonly Stroke[])[] {
  const corners = [{ x, y }, { x: x + width, y }, { x: x + width, y: y + height }, { x, y: y + height }];
  return corners.map((from, i) => scallops(from, corners[(i + 1) % 4]!));
}

/** Counter-clockwise round the rectangle, so that outward lies to the right. */
function scallops(from: Vec, to: Vec): Stroke[] {
  const along = sub(to, from);
  const long = Math.hypot(along.x, along.y);
  if (long === 0) return [];
  const count = Math.max(1, Math.ceil(long / CHORD));
  const chord = long / count;
  const radius = chord / 2 / Math.sin(HALF);
  const unit = scale(along, 1 / long);
  return Array.from({ length: count }, (_, i): Stroke => {
    const start = add(from, scale(unit, i * chord));
    const center = add(add(start, scale(unit, chord / 2)), scale(leftOf(unit), radius * Math.cos(HALF)));
    return { kind: 'arc', pen: PENS.note, center: toSheet(center), radius: inches(radius), start: radians(angleOf(sub(start, center))), sweep: radians(2 * HALF) };
  });
}

/** Triangles with the revision's letter, beside the cloud's corners and along its edges. */
export function* trianglePlaces(kit: Kit, letter: string, { x, y, width, height }: Rect): Generator<{ readonly strokes: readonly Stroke[] }> {
  const tall = kit.up + kit.down + 2 * kit.clear;
  const side = measureText(kit, letter) + 4 * kit.clear + (2 * tall) / Math.sqrt(3);
  const high = (side * Math.sqrt(3)) / 2;
  const off = BULGE + 0.06;
  const feet: Vec[] = [];
  for (const share of [1, 0, 0.5, 0.75, 0.25]) {
    feet.push({ x: x + width + off + side / 2, y: y + share * (height - high) }, { x: x - off - side / 2, y: y + share * (height - high) });
    feet.push({ x: x + side / 2 + share * (width - side), y: y + height + off }, { x: x + side / 2 + share * (width - side), y: y - off - high });
    feet.push({ x: x + width - off - side / 2, y: y + off + share * (height - high - 2 * off) }, { x: x + off + side / 2, y: y + off + share * (height - high - 2 * off) });
  }
  for (const foot of feet) {
    const [a, b, c] = [{ x: foot.x - side / 2, y: foot.y }, { x: foot.x + side / 2, y: foot.y }, { x: foot.x, y: foot.y + high }] as const;
    const at = toSheet({ x: foot.x, y: foot.y + kit.down + 1.5 * kit.clear });
    yield { strokes: [lineStroke(PENS.note, a, b), lineStroke(PENS.note, b, c), lineStroke(PENS.note, c, a), makeText(kit, 'NOTES', letter, at, 'middle')] };
  }
}
