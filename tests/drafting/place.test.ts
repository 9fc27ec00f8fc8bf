/** What a text is tried against before it stands: dots and small circles whole, and the room's own edges for lines too. */
import { expect, test } from 'vitest';
import { sheetPoint } from '../../core/base/points.ts';
import { inches } from '../../core/base/quantity.ts';
import { PENS, makeText } from '../../core/drafting/kit.ts';
import { makeOccupancy } from '../../core/drafting/occupancy.ts';
import { costOf, settle } from '../../core/drafting/place.ts';
import { type Stroke } from '../../core/drafting/primitives.ts';
import { strokeMeetsBox, textCorners } from '../support/paper-shapes.ts';
import { font, kitOf } from './sample.ts';

const kit = kitOf();
const room = { x: 0, y: 0, width: 10, height: 8 };

test('no text may stand where the checker would find it touching a dot or a small circle', () => {
  const obstacles: readonly Exclude<Stroke, { kind: 'text' }>[] = [
    { kind: 'dot', layer: 'MARKS', center: sheetPoint(5, 4), radius: inches(0.02) },
    { kind: 'circle', pen: PENS.mark, center: sheetPoint(5, 4), radius: inches(0.15) },
    { kind: 'circle', pen: PENS.mark, center: sheetPoint(5, 4), radius: inches(0.31) },
  ];
  let refused = 0;
  for (const obstacle of obstacles) {
    const occupancy = makeOccupancy();
    settle(kit, occupancy, [obstacle]);
    for (let x = 4.3; x < 5.7; x += 0.0131) {
      for (let y = 3.3; y < 4.7; y += 0.0117) {
        const text = makeText(kit, 'NOTES', 'R7', sheetPoint(x, y), 'middle');
        const cost = costOf(kit, occupancy, [text], room);
        if (cost === null) refused += 1;
        else expect(strokeMeetsBox(obstacle, textCorners(font, text, 0.02)), `${obstacle.kind} ${String(x)} ${String(y)}`).toBe(false);
      }
    }
  }
  expect(refused).toBeGreaterThan(1000);
});

test('a line that leaves the room may not stand', () => {
  const line = (x: number): Stroke => ({ kind: 'line', pen: PENS.size, a: sheetPoint(5, 4), b: sheetPoint(x, 4) });
  expect(costOf(kit, makeOccupancy(), [line(10)], room)).toBe(0);
  expect(costOf(kit, makeOccupancy(), [line(10.01)], room)).toBeNull();
});
