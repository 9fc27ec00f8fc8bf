/** The cut list of a whole project: by its properties, against the piece list and the bend schedule, and beside longest-first. */
import { beforeAll, describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { bendRows } from '../../core/schedules/index.ts';
import { type CutList, cutListColumns, cutListRows, planCutList, sectionJobs, tapeCutList } from '../../core/shop/cut-list/index.ts';
import { type LinearSolver } from '../../core/shop/linear-solver.ts';
import { csvCells } from '../../core/writers/index.ts';
import { createSolver } from '../../electron/solver/highs.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { cutBreaches } from '../support/cut-breaches.ts';
import { drawSound, EXAMPLES, exampleText } from '../support/drawn.ts';
import { partsOf } from '../support/laid-out.ts';

let solve: LinearSolver;
beforeAll(async () => { solve = await createSolver(); });

function planned(brief: Brief, parts = partsOf(brief)): CutList {
  const plans = planCutList(sectionJobs(brief, parts), solve);
  for (;;) {
    const step = plans.next();
    if (step.done === true) return step.value;
  }
}

const bars = (list: CutList): number => list.reduce((sum, section) => sum + section.bars.length, 0);

describe('the cut list of a project', () => {
  it.each(EXAMPLES)('cuts every bar piece once, in no more bars than a tape would: %s', (name) => {
    const { brief, parts } = drawSound(exampleText(name));
    const list = planned(brief, parts);
    const tape = tapeCutList(sectionJobs(brief, parts));
    expect(cutBreaches(brief, parts, list)).toEqual([]);
    expect(cutBreaches(brief, parts, tape)).toEqual([]);
    list.forEach((section, index) => {
      expect(section.bars.length, section.section).toBeLessThanOrEqual(tape[index]!.bars.length);
      expect(section.bars.length).toBe(section.atLeast);
    });
    expect(bars(list)).toBeGreaterThan(0);
  });

  it('cuts a rolled piece as long as the bend schedule orders it', () => {
    const brief = makeBrief({ shop: { grip: inches(9.5) } });
    const lengths = new Map(cutListRows(planned(brief)).map((row) => [row.mark, row.length]));
    const bends = bendRows(brief, partsOf(brief));
    expect(bends.length).toBeGreaterThan(3);
    for (const row of bends) expect(lengths.get(row.mark), row.mark).toBeCloseTo(row.orderLength, 4);
  });

  it('writes the contract\'s columns, the drop on the last row of a bar', () => {
    const rows = cutListRows(planned(makeBrief()));
    expect(cutListColumns('in').map((column) => column.name)).toEqual(['section', 'stock_length', 'bar', 'cut', 'mark', 'length', 'kerf', 'drop', 'trim', 'drop_is', 'from']);
    const cells = csvCells(cutListColumns('in'), rows);
    cells.forEach((cell, index) => {
      const next = cells[index + 1];
      const last = next?.[0] !== cell[0] || next?.[2] !== cell[2];
      expect(cell[7] !== '', `row ${String(index + 1)}`).toBe(last);
    });
    expect(cells[0]?.slice(1, 4)).toEqual(['252.0000', '1', '1']);
  });

  it('is the same list whenever it is planned', () => {
    expect(planned(makeBrief())).toEqual(planned(makeBrief()));
  });
});

describe('the shop\'s own bars', () => {
  const shopOf = (shop: Partial<Brief['shop']>): Brief => makeBrief({ shop });
  const posts = (list: CutList) => list.find(({ section }) => section === 'pipe 2 1/2 sch 40')!;

  it('are trimmed before the first piece, and the trim is no piece, kerf or drop', () => {
    const brief = shopOf({ trim: inches(2) });
    const list = planned(brief);
    expect(cutBreaches(brief, partsOf(brief), list)).toEqual([]);
    expect(list.every((section) => section.bars.every((bar) => bar.trim === 2))).toBe(true);
  });

  it('are used from the rack before any is bought, and no more of them than there are', () => {
    const brief = shopOf({ rack: { 'pipe 2 1/2 sch 40': [{ length: inches(252), count: 3, price: null }] } });
    const plain = posts(planned(makeBrief()));
    const { bars: used } = posts(planned(brief));
    expect(used.length).toBe(plain.bars.length);
    expect(used.filter((bar) => bar.stock.count !== null).length).toBe(3);
  });

  it('are chosen by price where every length of a section has one', () => {
    // Posts of 96 in, two to 252 and two to 288: the longer bar, at a quarter of the price a foot, is cheaper for each.
    const stock = { 'pipe 2 1/2 sch 40': [inches(252), inches(288)] };
    const cheap = posts(planned(shopOf({ stock, prices: { 'Pipe 2 1/2 Sch 40': 8, 'pipe 2 1/2 sch 40=24 ft': 48 } })));
    expect(cheap.bars.every((bar) => bar.stock.length === 288)).toBe(true);
    expect(cheap.cost).toEqual({ total: 48 * cheap.bars.length, atLeast: 48 * cheap.bars.length });
    const dear = posts(planned(shopOf({ stock, prices: { 'pipe 2 1/2 sch 40': 8 } })));
    expect(dear.bars.every((bar) => bar.stock.length === 252)).toBe(true);
    expect(dear.cost?.total).toBeCloseTo(8 * 21 * dear.bars.length, 6);
    expect(posts(planned(shopOf({ stock, prices: { 'pipe 2 1/2 sch 40=24 ft': 48 } }))).cost).toBeNull();
  });

  it('leave a drop that is kept from the usable length on', () => {
    const list = planned(shopOf({ keepDrop: inches(40) }));
    const drops = list.flatMap((section) => section.bars.map(({ drop, kept }) => ({ drop, kept })));
    expect(drops.some(({ kept }) => kept)).toBe(true);
    expect(drops.every(({ drop, kept }) => kept === drop >= 40)).toBe(true);
  });
});
