import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { railRows, type RowSettings } from '../../core/brief/index.ts';
import { section, sheet } from '../support/brief-builder.ts';

const rows = (parts: Partial<Record<'height' | 'solidTo' | 'rails' | 'bottomRail', number>>, sheeted = true): readonly number[] => railRows({
  height: inches(60), solidTo: inches(60), rails: 5, bottomRail: inches(12), rail: section('pipe 2 sch 40'), sheet: sheeted ? sheet('12 ga') : null, ...parts,
} as RowSettings);

describe('the rows of a fence (geometry contract, Fence)', () => {
  test('stand at equal pitch, the top one\'s upper edge at the height, the bottom one\'s center at bottomRail', () => {
    expect(rows({})).toEqual([12, 23.703125, 35.40625, 47.109375, 58.8125]);
    expect(rows({ rails: 2, height: 48 })).toEqual([12, 46.8125]);
  });

  test('on a part-solid fence the row nearest to solidTo moves to it', () => {
    expect(rows({ solidTo: 40 })).toEqual([12, 23.703125, 40, 47.109375, 58.8125]);
    expect(rows({ solidTo: 42 })).toEqual([12, 23.703125, 35.40625, 42, 58.8125]);
  });

  test('never the top one', () => {
    expect(rows({ solidTo: 56 })).toEqual([12, 23.703125, 35.40625, 56, 58.8125]);
    expect(rows({ solidTo: 50, rails: 2 })).toEqual([50, 58.8125]);
  });

  test('of two equally near the lower one', () => {
    expect(rows({ rails: 3, bottomRail: 10.8125, solidTo: 22.8125, height: 60 })).toEqual([22.8125, 34.8125, 58.8125]);
  });

  test('where nothing is solid, or all of it, none moves', () => {
    for (const solidTo of [0, 60]) expect(rows({ solidTo })).toEqual(rows({}));
    expect(rows({ solidTo: 40 }, false)).toEqual(rows({}));
  });

  test('a tube is as tall as its upright size', () => {
    expect(railRows({ height: inches(60), solidTo: inches(0), rails: 3, bottomRail: inches(10), rail: section('tube 2 x 4 x 3/16'), sheet: null })).toEqual([10, 34, 58]);
  });

  test('whatever the fence: as many as asked, the top edge at the height, a row at solidTo where part of it is solid', () => {
    fc.assert(fc.property(fc.integer({ min: 36, max: 96 }), fc.integer({ min: 2, max: 12 }), fc.integer({ min: 4, max: 30 }), fc.integer({ min: 1, max: 95 }), (height, rails, bottomRail, solidTo) => {
      const made = rows({ height, rails, bottomRail, solidTo: Math.min(solidTo, height) });
      expect(made).toHaveLength(rails);
      expect((made.at(-1) ?? NaN) + 2.375 / 2).toBe(height);
      if (solidTo < height) expect(made).toContain(solidTo);
      const moved = made.filter((row, index) => Math.abs(row - (bottomRail + ((height - 2.375 / 2 - bottomRail) / (rails - 1)) * index)) > 1e-9);
      expect(moved.length).toBeLessThanOrEqual(solidTo < height ? 1 : 0);
    }), { seed: 11, numRuns: 500 });
  });
});
