/** The bill: bars as planned, prices and totals, the area to coat; figures by hand beside each. */
import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { materialLines } from '../../core/schedules/index.ts';
import { billRows, coatedArea } from '../../core/shop/bill/index.ts';
import { sectionJobs, tapeCutList } from '../../core/shop/cut-list/index.ts';
import { shopPlates } from '../../core/shop/nesting/index.ts';
import { unusedPrices } from '../../core/shop/prices.ts';
import { say } from '../../core/text/index.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';

function billOf(shop: Partial<Brief['shop']> = {}) {
  const brief = makeBrief({ shop });
  const parts = partsOf(brief);
  const cuts = tapeCutList(sectionJobs(brief, parts));
  return { brief, parts, cuts, rows: billRows(brief, parts, materialLines(brief, laidOut(brief), parts), cuts, shopPlates(brief, parts)), shop: shopPlates(brief, parts) };
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

  it('prices bars and sheets as bought and the rest each, and nothing twice', () => {
    const { rows } = billOf({ prices: { 'Pipe 2 Sch 40': 2.5, '12 ga': 1.2, 'ring-hinge': 18, concrete: 150 } });
    const of = (item: string, section?: string) => rows.filter((row) => row.item === item && (section === undefined || row.section === section));
    const [bar] = of('bar', 'pipe 2 sch 40');
    expect([bar!.unitPrice, bar!.price]).toEqual([52.5, 52.5 * bar!.quantity]);
    expect(of('rail').every(({ price }) => price === null)).toBe(true);
    expect(of('skin').every(({ price }) => price === null)).toBe(true);
    // By the square foot of what is bought: 60 x 120 is 50 of them.
    const sheets = of('sheet', '12 ga');
    expect(sheets.length).toBeGreaterThan(0);
    for (const sheet of sheets) expect(sheet.price).toBeCloseTo((1.2 * sheet.quantity * sheet.stockLength! * sheet.stockWidth!) / 144, 9);
    expect(of('ring-hinge')[0]!.price).toBe(18 * of('ring-hinge')[0]!.quantity);
    expect(of('bar', 'pipe 4 sch 40')[0]!.price).toBeNull();
  });

  it('has every sheet of the nests once, priced by its size, else by its weight', () => {
    const { rows, shop } = billOf({ sheets: [[inches(60), inches(120)]], prices: { '12 Ga = 120 x 60': 95, '12 ga=lb': 9, '1/4=lb': 0.8, '3/8=kg': 2 } });
    const sheets = rows.filter(({ item }) => item === 'sheet');
    expect(sheets.map(({ section, quantity }) => [section, quantity]))
      .toEqual(shop.nests.map(({ section, sheets: all }) => [section, all.reduce((sum, { count }) => sum + count, 0)]));
    const of = (section: string) => sheets.find((row) => row.section === section)!;
    expect(of('12 ga')).toMatchObject({ unitPrice: 95, price: 95 * of('12 ga').quantity, stockLength: 120, stockWidth: 60, weight: null });
    // 5 by 10 ft of 1/4 plate: 50 square feet at 10.21 lb (490 lb a cubic foot over 48).
    expect(of('1/4').unitPrice! / (0.8 * 50 * 10.21)).toBeCloseTo(1, 2);
    expect(of('1/4').boughtWeight! / of('1/4').quantity / (50 * 10.21)).toBeCloseTo(1, 2);
    expect(of('3/8').unitPrice! / (2 * 50 * 15.31 * 0.4536)).toBeCloseTo(1, 2);
    expect(unusedPrices({ '12 ga=120 x 60': 1, '12 ga=lb': 1, '9 ga=lb': 1 }, new Set(['12 ga']))).toEqual(['9 ga=lb']);
  });

  it('prices the post holes by bags where bags have a price, else by concrete, never by both', () => {
    const priced = (prices: Brief['shop']['prices']) => billOf({ prices }).rows.filter(({ item, section }) => section === say('schedules.postHoles') || item === 'premix').map(({ item, price }) => [item, price !== null]);
    expect(priced({ concrete: 150 })).toEqual([['concrete', true], ['premix', false]]);
    expect(priced({ concrete: 150, premix: 6 })).toEqual([['concrete', false], ['premix', true]]);
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
