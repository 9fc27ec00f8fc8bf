import { describe, expect, it } from 'vitest';
import { columnWidths, rowsBy, rowsInSight, rowsWith } from '../../../renderer/parts/table-rows.ts';

const columns = [{ name: 'mark', figure: false, unit: null }, { name: 'length', figure: true, unit: 'in' }] as const;
const rows = [['R10', '96.0000'], ['R2', '102.5000'], ['P1', ''], ['R2', '-3.0000'], ['', '7.0000']];

describe('rows of a schedule', () => {
  it('go by figures as figures and by words with their numbers as numbers, empty cells last either way', () => {
    expect(rowsBy(rows, columns, { column: 1, down: false }).map((row) => row[1])).toEqual(['-3.0000', '7.0000', '96.0000', '102.5000', '']);
    expect(rowsBy(rows, columns, { column: 1, down: true }).map((row) => row[1])).toEqual(['102.5000', '96.0000', '7.0000', '-3.0000', '']);
    expect(rowsBy(rows, columns, { column: 0, down: false }).map((row) => row[0])).toEqual(['P1', 'R2', 'R2', 'R10', '']);
    expect(rowsBy(rows, columns, null)).toBe(rows);
  });

  it('keep their order where they are equal', () => {
    expect(rowsBy(rows, columns, { column: 0, down: false }).slice(1, 3).map((row) => row[1])).toEqual(['102.5000', '-3.0000']);
  });

  it('go by the full figure where a cell is a printed size', () => {
    const printed = [['H1', '9\'-0"'], ['H2', '10\'-0"'], ['H3', '11"']];
    const inches = new Map([['H1', 108], ['H2', 120], ['H3', 11]]);
    const sorted = rowsBy(printed, columns, { column: 1, down: false }, (row) => inches.get(row[0]!) ?? NaN);
    expect(sorted.map((row) => row[0])).toEqual(['H3', 'H1', 'H2']);
  });

  it('are narrowed to those that hold every word, whatever the capitals', () => {
    expect(rowsWith(rows, 'r2')).toEqual([rows[1], rows[3]]);
    expect(rowsWith(rows, ' r2  102 ')).toEqual([rows[1]]);
    expect(rowsWith(rows, '  ')).toBe(rows);
    expect(rowsWith(rows, 'nothing')).toEqual([]);
  });

  it('are made only where they are in sight, the last ones too', () => {
    expect(rowsInSight(20000, 0, 440, 44)).toEqual({ from: 0, to: 20 });
    expect(rowsInSight(20000, 44000, 440, 44)).toEqual({ from: 990, to: 1020 });
    expect(rowsInSight(20000, 20000 * 44 - 440, 440, 44)).toEqual({ from: 19980, to: 20000 });
    expect(rowsInSight(5, 9999, 440, 44).from).toBeLessThan(5);
    expect(rowsInSight(0, 0, 440, 44)).toEqual({ from: 0, to: 0 });
  });

  it('have columns as wide as their widest cell or heading', () => {
    expect(columnWidths({ id: 'x', title: 'x', columns, rows, markColumn: 0 })).toEqual([4, 8]);
  });
});
