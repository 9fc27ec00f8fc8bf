/** Boxes and segments against sampling: a point found in both settles it. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type TurnedBox, boxBounds, boxCorners, boxesMeet, growBox, segmentMeetsBox, textBox } from '../../core/drafting/boxes.ts';
import { sheetPoint } from '../../core/base/points.ts';
import { radians } from '../../core/base/quantity.ts';
import { makeText } from '../../core/drafting/kit.ts';
import { textCorners } from '../support/paper-shapes.ts';
import { font, kitOf } from './sample.ts';

const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const boxes = fc.record({ cx: number(-1, 1), cy: number(-1, 1), hx: number(0.2, 1.4), hy: number(0.2, 0.5), turn: number(0, 6.3) })
  .map(({ turn, ...rest }): TurnedBox => ({ ...rest, cos: Math.cos(turn), sin: Math.sin(turn) }));

const inside = (box: TurnedBox, x: number, y: number, slack: number): boolean => {
  const u = (x - box.cx) * box.cos + (y - box.cy) * box.sin;
  const v = (y - box.cy) * box.cos - (x - box.cx) * box.sin;
  return Math.abs(u) < box.hx + slack && Math.abs(v) < box.hy + slack;
};
function samples(box: TurnedBox, step: number): (readonly [number, number])[] {
  const out: (readonly [number, number])[] = [];
  for (let u = -box.hx; u <= box.hx; u += step) {
    for (let v = -box.hy; v <= box.hy; v += step) out.push([box.cx + u * box.cos - v * box.sin, box.cy + u * box.sin + v * box.cos]);
  }
  return out;
}

test('two boxes meet where a sample lies in both, and have a sample near both where they meet', () => {
  fc.assert(
    fc.property(boxes, boxes, (a, b) => {
      const meet = boxesMeet(a, b);
      expect(boxesMeet(b, a)).toBe(meet);
      if (samples(a, 0.05).some(([x, y]) => inside(b, x, y, -1e-6))) expect(meet).toBe(true);
      if (meet) expect(samples(growBox(a, 0.15), 0.05).some(([x, y]) => inside(b, x, y, 0.05))).toBe(true);
    }),
    { seed: 21, numRuns: 400 },
  );
});

test('a segment meets a box as its samples say', () => {
  fc.assert(
    fc.property(boxes, number(-2, 2), number(-2, 2), number(-2, 2), number(-2, 2), (box, ax, ay, bx, by) => {
      const meets = segmentMeetsBox({ a: { x: ax, y: ay }, b: { x: bx, y: by } }, box);
      const at = Array.from({ length: 301 }, (_, i) => [ax + ((bx - ax) * i) / 300, ay + ((by - ay) * i) / 300] as const);
      if (at.some(([x, y]) => inside(box, x, y, -1e-6))) expect(meets).toBe(true);
      if (meets) expect(at.some(([x, y]) => inside(box, x, y, 0.02))).toBe(true);
    }),
    { seed: 22, numRuns: 1000 },
  );
});

test('boxes that share an edge do not meet, nor a segment along it', () => {
  const a: TurnedBox = { cx: 0, cy: 0, hx: 2, hy: 1, cos: 1, sin: 0 };
  expect(boxesMeet(a, { ...a, cx: 4 })).toBe(false);
  expect(boxesMeet(a, { ...a, cx: 3.999 })).toBe(true);
  expect(segmentMeetsBox({ a: { x: -5, y: 1 }, b: { x: 5, y: 1 } }, a)).toBe(false);
  expect(segmentMeetsBox({ a: { x: -5, y: 0.99 }, b: { x: 5, y: 0.99 } }, a)).toBe(true);
});

test('bounds hold the corners and no more', () => {
  fc.assert(
    fc.property(boxes, (box) => {
      const corners = boxCorners(box);
      const bounds = boxBounds(box);
      expect(bounds.x).toBeCloseTo(Math.min(...corners.map((c) => c.x)), 9);
      expect(bounds.y + bounds.height).toBeCloseTo(Math.max(...corners.map((c) => c.y)), 9);
    }),
    { seed: 23 },
  );
});

test("a text's box is the one that the checker works out by itself, at every anchor and turn", () => {
  for (const anchor of ['start', 'middle', 'end'] as const) {
    for (const turn of [0, 0.4, 1.9, -1.2]) {
      const text = makeText(kitOf(), 'NOTES', "12'-3 5/8\"", sheetPoint(3, 5), anchor, radians(turn));
      const own = textCorners(font, text, 0.02);
      boxCorners(textBox(font, text, 0.02)).forEach((corner, i) => {
        expect(corner.x).toBeCloseTo(own[i]!.x, 9);
        expect(corner.y).toBeCloseTo(own[i]!.y, 9);
      });
    }
  }
});
