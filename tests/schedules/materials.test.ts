import { describe, expect, it } from 'vitest';
import { type Brief } from '../../core/brief/types.ts';
import { materialRows } from '../../core/schedules/index.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { partsOf } from '../support/laid-out.ts';

const rowsOf = (brief: Brief) => materialRows(brief, partsOf(brief));

describe('the bill of materials', () => {
  it('holds every piece and its weight once', () => {
    const { pieces } = partsOf(makeBrief());
    const rows = rowsOf(makeBrief());
    expect(rows.reduce((sum, row) => sum + row.pieces, 0)).toBe(pieces.length);
    expect(rows.reduce((sum, row) => sum + row.weight, 0)).toBeCloseTo(pieces.reduce((sum, piece) => sum + piece.weight, 0), 6);
    expect(rows.map((row) => `${row.item} ${row.section}`).sort()).toEqual(
      ['cap 3/16', 'gate 1/4', 'gate 12 ga', 'gate 3/8', 'gate pipe 1 1/2 sch 40', 'gate pipe 2 sch 40', 'plate 1/4', 'post pipe 2 1/2 sch 40', 'post pipe 4 sch 40', 'rail pipe 2 sch 40', 'skin 12 ga']);
  });

  // ASME B36.10M plain-end lb/ft (second: a reprint), to 0.3 %; the Manufacturers' Standard Gauge's 4.375 lb/ft2 for 12 ga (read) counts
  // 41.82 lb/ft2 an inch where steel has 40.84.
  it('weighs pipe as the handbook does', () => {
    const perUnit = (name: string) => {
      const row = rowsOf(makeBrief()).find((each) => `${each.item} ${each.section}` === name)!;
      return row.weight / row.quantity;
    };
    for (const [name, printed] of [['rail pipe 2 sch 40', 3.65], ['post pipe 2 1/2 sch 40', 5.79], ['post pipe 4 sch 40', 10.79]] as const) {
      expect(Math.abs(perUnit(name) / printed - 1)).toBeLessThan(0.003);
    }
    const sheet = perUnit('skin 12 ga');
    expect(Math.min(Math.abs(sheet / 4.375 - 1), Math.abs(sheet / (4.375 * 40.84 / 41.82) - 1))).toBeLessThan(0.001);
  });
});
