/** The grid finds what a look at every box and every line finds, near the paper's corner and far from it. */
import { expect, test } from 'vitest';
import { type TurnedBox, boxesMeet, segmentMeetsBox } from '../../core/drafting/boxes.ts';
import { makeOccupancy } from '../../core/drafting/occupancy.ts';
import { seeded } from '../support/random.ts';

interface Point {
  readonly x: number;
  readonly y: number;
}
interface Line {
  readonly a: Point;
  readonly b: Point;
}

/** On which side of a line two points lie, by the sign of a plain cross product. */
const parts = (line: Line, p: Point, q: Point): boolean => {
  const side = (v: Point): number => (line.b.x - line.a.x) * (v.y - line.a.y) - (line.b.y - line.a.y) * (v.x - line.a.x);
  return side(p) * side(q) < 0;
};
const cross = (p: Line, q: Line): boolean => parts(p, q.a, q.b) && parts(q, p.a, p.b);

test.each([[0, 3], [-7, 12], [900, 400], [-3000, 2000]])('the grid finds what a look at all finds: about %d, %d wide', (middle, wide) => {
  const random = seeded(middle + wide);
  const place = (): Point => ({ x: middle + random.between(-wide, wide), y: middle + random.between(-wide, wide) });
  const line = (): Line => {
    const a = place();
    return random.chance(0.3) ? { a, b: place() } : { a, b: { x: a.x + random.between(-0.6, 0.6), y: random.chance(0.4) ? a.y : a.y + random.between(-0.6, 0.6) } };
  };
  const box = (): TurnedBox => {
    const turn = random.chance(0.5) ? 0 : random.between(0, 6);
    const { x, y } = place();
    return { cx: x, cy: y, hx: random.between(0.05, 1.2), hy: random.between(0.05, 0.2), cos: Math.cos(turn), sin: Math.sin(turn) };
  };
  const list = <T>(count: number, make: () => T): T[] => Array.from({ length: count }, make);
  const [boxes, lines, steel] = [list(60, box), list(60, line), list(80, line)];
  const occupancy = makeOccupancy();
  for (const one of boxes) occupancy.addBox(one);
  for (const { a, b } of lines) occupancy.addLine(a.x, a.y, b.x, b.y);
  for (const { a, b } of steel) occupancy.addSteel(a.x, a.y, b.x, b.y);
  let met = 0;
  for (const tried of [...list(200, box), ...boxes.slice(0, 10)]) {
    const blocked = boxes.some((one) => boxesMeet(tried, one)) || lines.some((one) => segmentMeetsBox(one, tried));
    expect(occupancy.blocked(tried)).toBe(blocked);
    expect(occupancy.steelUnder(tried)).toBe(steel.filter((one) => segmentMeetsBox(one, tried)).length);
    met += Number(blocked);
  }
  for (const tried of [...list(200, line), ...lines.slice(0, 10)]) {
    const { a, b } = tried;
    const crossed = lines.filter((one) => cross(tried, one)).length;
    expect(occupancy.crossesText(a.x, a.y, b.x, b.y)).toBe(boxes.some((one) => segmentMeetsBox(tried, one)));
    expect(occupancy.linesCrossed(a.x, a.y, b.x, b.y)).toBe(crossed);
    met += crossed;
  }
  expect(met).toBeGreaterThan(10);
});
