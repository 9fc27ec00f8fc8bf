import fc from 'fast-check';
import { expect, test } from 'vitest';
import { spread } from '../../core/drafting/spread.ts';

const movement = (anchors: readonly number[], middles: readonly number[]): number => middles.reduce((sum, m, i) => sum + (m - anchors[i]!) ** 2, 0);

test('leaves texts where they belong when none touch', () => {
  expect(spread([1, 3, 7.5], [0.5, 1.25, 2], [0, 10])).toEqual([1, 3, 7.5]);
});

test('moves two that touch by half their overlap each', () => {
  // 0.75 in needed between the middles, 0.25 in there: 0.25 in each.
  const [a, b] = spread([4, 4.25], [1, 0.5], [0, 10]);
  expect([a, b]).toEqual([3.75, 4.5]);
});

test('keeps inside its range, and runs past it evenly only when it must', () => {
  expect(spread([0.1, 0.2], [1, 2], [0, 10])).toEqual([0.5, 2]);
  expect(spread([9.9], [2], [0, 10])).toEqual([9]);
  expect(spread([1, 2], [3, 5], [0, 6])).toEqual([0.5, 4.5]);
  expect(() => spread([2, 1], [1, 1], [0, 9])).toThrow('ascend');
});

const cases = fc.array(fc.record({ anchor: fc.integer({ min: 0, max: 200 }), size: fc.integer({ min: 1, max: 40 }) }), { minLength: 1, maxLength: 25 });

test('keeps the order, overlaps nothing', () => {
  fc.assert(
    fc.property(cases, (list) => {
      const anchors = list.map((one) => one.anchor / 7).sort((a, b) => a - b);
      const sizes = list.map((one) => one.size / 11);
      const middles = spread(anchors, sizes, [-1, 31]);
      for (let i = 1; i < middles.length; i += 1) expect(middles[i]! - middles[i - 1]!).toBeGreaterThanOrEqual((sizes[i]! + sizes[i - 1]!) / 2 - 1e-9);
      if (sizes.reduce((sum, s) => sum + s, 0) <= 32) {
        expect(middles[0]! - sizes[0]! / 2).toBeGreaterThanOrEqual(-1 - 1e-9);
        expect(middles.at(-1)! + sizes.at(-1)! / 2).toBeLessThanOrEqual(31 + 1e-9);
      }
    }),
    { seed: 11, numRuns: 500 },
  );
});

test('moves them least, against trying every place on a grid', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 1, max: 3 })), { minLength: 2, maxLength: 3 }), (list) => {
      const anchors = list.map(([a]) => a / 2).sort((a, b) => a - b);
      const sizes = list.map(([, s]) => s / 2);
      const grid = Array.from({ length: 49 }, (_, i) => i / 8);
      let least = Infinity;
      const visit = (done: readonly number[]): void => {
        const i = done.length;
        if (i === anchors.length) {
          least = Math.min(least, movement(anchors, done));
          return;
        }
        for (const m of grid) {
          if (m - sizes[i]! / 2 < 0 || m + sizes[i]! / 2 > 6) continue;
          if (i > 0 && m - done[i - 1]! < (sizes[i]! + sizes[i - 1]!) / 2) continue;
          visit([...done, m]);
        }
      };
      visit([]);
      const found = movement(anchors, spread(anchors, sizes, [0, 6]));
      expect(found).toBeLessThanOrEqual(least + 1e-9);
      // The grid's step is 1/8: the best place on it is not much worse.
      expect(least - found).toBeLessThan(0.6);
    }),
    { seed: 12, numRuns: 60 },
  );
});
