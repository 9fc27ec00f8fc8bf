import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { materialColumns, materialRows, pieceColumns, pieceRows } from '../../core/schedules/index.ts';
import { writeCsv } from '../../core/writers/csv.ts';
import { makeBrief, section } from '../support/brief-builder.ts';
import { randomWorked, work } from './project.ts';

const projects = [work(makeBrief()), ...randomWorked(60)];

describe('the schedule of pieces', () => {
  it('has enough random projects behind it', () => {
    expect(projects.length).toBeGreaterThan(10);
  });

  it('counts every piece once, one row for each mark, run, side and first bay', () => {
    for (const { parts } of projects) {
      const rows = pieceRows(parts);
      expect(rows.reduce((sum, row) => sum + row.quantity, 0)).toBe(parts.pieces.length);
      const names = rows.map(({ mark, run, side, bay }) => JSON.stringify([mark, run, side, bay]));
      expect(new Set(names).size).toBe(rows.length);
      for (const row of rows) {
        const counted = parts.pieces.filter(({ mark, run, side, bay }) => mark === row.mark && run === row.run && side === row.side && bay === row.bay);
        expect(counted.length).toBe(row.quantity);
        const { kind, section: made, length, lengthShort, weight } = row;
        for (const piece of counted) {
          expect(piece).toMatchObject({ kind, section: made, length, lengthShort, weight });
          expect(piece.bend?.radius).toBe(row.bend?.radius);
        }
      }
    }
  });

  it('puts alike rails of one bay in one row', () => {
    const rows = pieceRows(work(makeBrief()).parts);
    expect(rows.some((row) => row.kind === 'rail' && row.quantity > 1)).toBe(true);
  });

  it('writes the columns of the contract, angles in degrees, straight pieces with an empty bend', () => {
    const rows = pieceRows(work(makeBrief()).parts);
    const table = Papa.parse<Record<string, string>>(writeCsv(pieceColumns('in'), rows).trimEnd(), { header: true });
    expect(table.meta.fields?.slice(0, 12)).toEqual(
      ['mark', 'kind', 'quantity', 'section', 'length', 'length_short', 'bend_radius', 'bend_angle_deg', 'weight_lb', 'run', 'side', 'bay']);
    expect(table.data.length).toBe(rows.length);
    const rail = table.data.find((row) => row['kind'] === 'rail' && row['run'] === 'crowd-pen')!;
    expect(rail['bend_radius']).toBe('145.2921');
    expect(Number(rail['bend_angle_deg'])).toBeCloseTo((Number(rail['length']) / 145.2921) * (180 / Math.PI), 3);
    expect(table.data.find((row) => row['kind'] === 'post')).toMatchObject({ bend_radius: '', bend_angle_deg: '', length_short: '' });
  });
});

describe('the bill of materials', () => {
  it('weighs what the pieces weigh', () => {
    for (const { brief, parts } of projects) {
      const sum = materialRows(brief, parts).reduce((total, row) => total + row.weight, 0);
      expect(sum).toBeCloseTo(parts.pieces.reduce((total, piece) => total + piece.weight, 0), 6);
    }
  });

  it('gives feet of bar at the handbook weight a foot', () => {
    const { brief, parts } = work(makeBrief());
    const rail = materialRows(brief, parts).find((row) => row.item === 'rail')!;
    expect(rail).toMatchObject({ section: section('pipe 2 sch 40').name, unit: 'ft', price: null });
    // ASME B36.10M, NPS 2 schedule 40: 3.65 lb/ft plain end (3.66 in older handbooks); from memory.
    expect(rail.weight / rail.quantity).toBeGreaterThan(3.645);
    expect(rail.weight / rail.quantity).toBeLessThan(3.665);
  });

  it('gives the same steel in meters', () => {
    const { brief, parts } = work(makeBrief());
    const metric = materialRows({ ...brief, units: 'mm' }, parts);
    materialRows(brief, parts).forEach((row, i) => {
      const other = metric[i]!;
      expect([row.unit, other.unit]).toEqual(row.unit === 'ft' ? ['ft', 'm'] : ['ft2', 'm2']);
      // A foot is 0.3048 m exactly (international yard and pound agreement, 1959).
      expect(other.quantity).toBeCloseTo(row.quantity * (row.unit === 'ft' ? 0.3048 : 0.3048 ** 2), 8);
      expect(other.weight).toBe(row.weight);
    });
  });

  it('writes the columns of the contract', () => {
    const { brief, parts } = work(makeBrief());
    const [header] = writeCsv(materialColumns(), materialRows(brief, parts)).split('\r\n');
    expect(header).toMatch(/^item,section,quantity,unit,weight_lb,price(,|$)/);
  });
});
