import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { bendColumns, bendRows, materialColumns, materialRows, pieceColumns, pieceRows, stakeoutColumns, stakeoutRows } from '../../core/schedules/index.ts';
import { writeCsv } from '../../core/writers/csv.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';

const brief = makeBrief();
const parts = partsOf(brief);
const read = (csv: string): Record<string, string>[] => Papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true }).data;

describe('schedules as CSV, read back by another program (papaparse)', () => {
  it('hold every row, lengths and weights to 4 decimals, degrees to 6', () => {
    const rows = pieceRows(parts);
    const cells = read(writeCsv(pieceColumns('in'), rows));
    expect(cells.length).toBe(rows.length);
    cells.forEach((cell, i) => {
      expect(cell['length']).toBe(rows[i]!.length.toFixed(4));
      expect(cell['weight_lb']).toMatch(/^\d+\.\d{4}$/);
      expect(cell['bend_angle_deg']).toMatch(/^(\d+\.\d{6})?$/);
      expect(cell['length_short']).toBe(rows[i]!.lengthShort?.toFixed(4) ?? '');
      expect(cell['quantity']).toMatch(/^[1-9]\d*$/);
    });
  });

  it('are written for every schedule of this version', () => {
    expect(read(writeCsv(bendColumns('in'), bendRows(brief, parts))).length).toBe(bendRows(brief, parts).length);
    expect(read(writeCsv(materialColumns(), materialRows(brief, parts))).every((cell) => cell['price'] === '')).toBe(true);
    const stakes = read(writeCsv(stakeoutColumns('in'), stakeoutRows(brief, laidOut(brief))));
    expect(stakes[0]).toMatchObject({ point: 'A', kind: 'control', x: '0.0000', y: '0.0000', hole_depth: '', run: '', tie_c: '' });
    expect(stakes.map((cell) => cell['x']).join(' ')).not.toMatch(/-0\.0000\b/);
  });
});
