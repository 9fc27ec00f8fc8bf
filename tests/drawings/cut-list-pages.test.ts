import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { draft } from '../../core/drafting/draft.ts';
import { cutListDrawings } from '../../core/drawings/cut-list.ts';
import { titleBlockOf } from '../../core/drawings/index.ts';
import { type BarPlan } from '../../core/shop/cut-list/index.ts';
import { drawingFont as font, drawSound, exampleText } from '../support/drawn.ts';
import { sheetBreaches } from '../support/sheet-breaches.ts';

const BARS = 4000;
const bar: BarPlan = { stock: { length: inches(252), price: null, count: null }, trim: inches(0), cuts: [{ mark: 'R1', length: inches(240), kerf: inches(0.125) }], drop: inches(11.875), kept: false };

describe('the cut list', () => {
  it('takes as many pages as bars that are cut alike have boxes to tick', () => {
    const { brief, layout, parts } = drawSound(exampleText('tight-curve'));
    const cuts = [{ section: 'pipe 2 sch 40', bars: Array.from({ length: BARS }, () => bar), keepDrop: inches(24), atLeast: BARS, cost: null }];
    const pages = cutListDrawings({ brief, layout, parts, font, cuts });
    const rows = pages.flatMap(({ bars = [] }) => bars.flatMap(({ entries }) => entries.filter((entry) => entry.kind === 'row')));
    expect(rows.reduce((sum, { count }) => sum + count, 0)).toBe(BARS);
    expect(rows[1]?.words.startsWith(`bars ${String((rows[0]?.count ?? 0) + 1)} to `)).toBe(true);
    expect(pages.flatMap((page) => sheetBreaches(draft(font, titleBlockOf(brief), page).sheet, font))).toEqual([]);
  });
});
