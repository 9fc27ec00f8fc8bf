/** Tables: RFC 4180, read back by papaparse. */
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { type CsvColumn, writeCsv } from '../../core/writers/index.ts';

interface Row {
  readonly mark: string;
  readonly note: string;
  readonly length: number | null;
  readonly angle: number;
  readonly count: number;
}
const row: Row = { mark: 'R1', note: 'as it is', length: 116.5, angle: 22.5, count: 3 };
const columns: readonly CsvColumn<Row>[] = [
  { name: 'mark', kind: 'text', value: (item) => item.mark },
  { name: 'note', kind: 'user-text', value: (item) => item.note },
  { name: 'length', kind: 'length', value: (item) => item.length },
  { name: 'angle_deg', kind: 'angle', value: (item) => item.angle },
  { name: 'quantity', kind: 'integer', value: (item) => item.count },
];
const HEADER = 'mark,note,length,angle_deg,quantity\r\n';

describe('a CSV', () => {
  test('has a header row, CRLF, four decimals of a length, six of an angle', () => {
    expect(writeCsv(columns, [row])).toBe(`${HEADER}R1,as it is,116.5000,22.500000,3\r\n`);
    expect(writeCsv(columns, [])).toBe(HEADER);
  });

  test('leaves a cell empty where there is nothing', () => {
    expect(writeCsv(columns, [{ ...row, length: null }])).toBe(`${HEADER}R1,as it is,,22.500000,3\r\n`);
  });

  test('never writes a minus zero, but does write a minus', () => {
    expect(writeCsv(columns, [{ ...row, length: -0.00004, angle: -0 }])).toContain(',0.0000,0.000000,');
    expect(writeCsv(columns, [{ ...row, length: -0.00006 }])).toContain(',-0.0001,');
  });

  test('weights and areas have four decimals, a price has two', () => {
    const other: readonly CsvColumn<number>[] = (['weight', 'area', 'number', 'price'] as const).map((kind) => ({ name: kind, kind, value: (item) => item }));
    expect(writeCsv(other, [12.34567])).toBe('weight,area,number,price\r\n12.3457,12.3457,12.3457,12.35\r\n');
  });

  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\uff1d1'])('guards %s from a person, and leaves ours alone', (formula) => {
    expect(writeCsv(columns, [{ ...row, mark: formula, note: formula }])).toContain(`\r\n${formula},'${formula},`);
  });

  test('quotes what needs it', () => {
    expect(writeCsv(columns, [{ ...row, note: '12\'-3", left\nand right' }])).toContain(',"12\'-3"", left\nand right",');
  });

  test('any table is read back as it was', () => {
    const rows = fc.array(fc.record({ mark: fc.string(), note: fc.string({ unit: 'grapheme' }), length: fc.constant(1.5), angle: fc.constant(2), count: fc.nat() }), { minLength: 1 });
    fc.assert(fc.property(rows, (table) => {
      const { data, errors } = Papa.parse<string[]>(writeCsv(columns, table), { newline: '\r\n' });
      expect(errors).toEqual([]);
      expect(data.slice(1, -1)).toEqual(table.map((item) => [
        item.mark, /^[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]/.test(item.note) ? `'${item.note}` : item.note, '1.5000', '2.000000', String(item.count),
      ]));
    }));
  });

  test.each([NaN, Infinity, 1.5])('throws on %s where it does not belong, with the column', (figure) => {
    expect(() => writeCsv(columns, [{ ...row, count: figure }])).toThrow(`quantity: not a figure for its column (integer): ${String(figure)}`);
  });
});
