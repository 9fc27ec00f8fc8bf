/** The bill: bars as planned, prices and totals, the area to coat; figures by hand beside each. */
import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { materialLines } from '../../core/schedules/index.ts';
import { billRows, coatedArea } from '../../core/shop/bill/index.ts';
import { sectionJobs, tapeCutList } from '../../core/shop/cut-list/index.ts';
import { unusedPrices } from '../../core/shop/prices.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';

function billOf(shop: Partial<Brief['shop']> = {}) {
  const brief = makeBrief({ shop });
  const parts = partsOf(brief);
  const cuts = tapeCutList(sectionJobs(brief, parts));
  return { brief, parts, cuts, rows: billRows(brief, parts, materialLines(brief, laidOut(brief), parts), cuts) };
}

describe('the bill', () => {
  it('has every bar of the cut list once, whole, and its net weights are those of the pieces', () => {
    const { rows, cuts, parts } = billOf();
    const bars = rows.filter(({ item }) => item === 'bar');
    expect(bars.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(cuts.reduce((sum, { bars: all }) => sum + all.length, 0));
    expect(bars.every(({ weight, stockLength }) => weight === null && stockLength === 252)).toBe(true);
    const kinds = new Set<string>(parts.pieces.map(({ kind }) => kind));
    const net = rows.filter(({ item }) => kinds.has(item)).reduce((sum, { weight }) => sum + (weight ?? 0), 0);
    expect(net).toBeCloseTo(parts.pieces.reduce((sum, { weight }) => sum + weight, 0), 6);
    // 21 ft of 2 in schedule 40 at 3.65 lb a foot (ASME B36.10M plain end, second: a reprint) is 76.65 lb.
    const pipe = bars.find(({ section }) => section === 'pipe 2 sch 40')!;
    expect(Math.abs(pipe.boughtWeight! / pipe.quantity / 76.65 - 1)).toBeLessThan(0.003);
  });

  it('prices bars as bought, sheet by its net area and the rest each, and nothing twice', () => {
    const { rows } = billOf({ prices: { 'Pipe 2 Sch 40': 2.5, '12 ga': 1.2, 'ring-hinge': 18, concrete: 150 } });
    const of = (item: string, section?: string) => rows.filter((row) => row.item === item && (section === undefined || row.section === section));
    const [bar] = of('bar', 'pipe 2 sch 40');
    expect([bar!.unitPrice, bar!.price]).toEqual([52.5, 52.5 * bar!.quantity]);
    expect(of('rail').every(({ price }) => price === null)).toBe(true);
    const [skin] = of('skin', '12 ga');
    expect(skin!.price).toBeCloseTo(1.2 * skin!.quantity, 9);
    expect(of('ring-hinge')[0]!.price).toBe(18 * of('ring-hinge')[0]!.quantity);
    expect(of('bar', 'pipe 4 sch 40')[0]!.price).toBeNull();
  });

  it('tells bars from the rack apart, at what they are worth', () => {
    const { rows } = billOf({ prices: { 'pipe 4 sch 40': 10 }, rack: { 'pipe 4 sch 40': [{ length: inches(300), count: 1, price: 30 }] } });
    // Longest-first takes the longest bar that there is.
    expect(rows.filter(({ section, unit }) => section === 'pipe 4 sch 40' && unit === 'each')).toMatchObject([{ item: 'rack-bar', quantity: 1, stockLength: 300, unitPrice: 30, price: 30 }]);
  });

  it('names the prices that name nothing', () => {
    const prices = { 'Pipe 2 SCH. 40': 1, 'pipe 2 sch 40=24 ft': 2, gold: 3, 'gold=24 ft': 4 };
    expect(unusedPrices(prices, new Set(['pipe 2 sch 40', 'bar']))).toEqual(['gold', 'gold=24 ft']);
  });
});

describe('the area to coat', () => {
  it('is the outside of bars and both faces of sheet', () => {
    const { brief, parts } = billOf();
    const piece = parts.pieces.find(({ kind, section }) => kind === 'post' && section === 'pipe 2 1/2 sch 40')!;
    const skin = parts.pieces.find(({ kind }) => kind === 'skin')!;
    // Outside diameter 2.875 in (ASME B36.10M).
    expect(coatedArea(brief, { ...parts, pieces: [piece] }).area).toBeCloseTo(Math.PI * 2.875 * piece.length, 6);
    expect(coatedArea(brief, { ...parts, pieces: [skin] }).area).toBeCloseTo(2 * skin.length * skin.flatHeight!, 6);
    // A half circle of radius 10 on its diameter, with a hole of radius 2: by hand.
    const flat = { outer: { kind: 'path', corners: [{ x: 0, y: 0, bulge: 0 }, { x: 20, y: 0, bulge: 1 }] }, holes: [{ kind: 'circle', center: { x: 10, y: 4 }, radius: 2 }] } as const;
    expect(coatedArea(brief, { ...parts, pieces: [{ ...skin, flat }] }).area).toBeCloseTo(2 * (Math.PI * 50 - Math.PI * 4), 6);
  });

  it('names what it leaves out', () => {
    const { brief, parts } = billOf();
    expect(coatedArea(brief, parts).left).toEqual([]);
    expect(coatedArea(brief, { ...parts, pieces: [{ ...parts.pieces[0]!, flatHeight: null, section: 'timber 2 x 12' }] })).toEqual({ area: 0, pieces: 0, left: ['timber 2 x 12'] });
  });
});
