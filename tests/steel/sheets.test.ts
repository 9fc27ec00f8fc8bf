import { expect, test } from 'vitest';
import { parseSheet } from '../../core/steel/index.ts';

const found = (name: string) => {
  const sheet = parseSheet(name);
  if (sheet === null) throw new Error(`no sheet: ${name}`);
  return sheet;
};

/** Manufacturers' Standard Gauge, read in the table: gauge, thickness in, printed lb/ft². */
const READ = [[7, 0.1793, 7.5], [10, 0.1345, 5.625], [11, 0.1196, 5], [12, 0.1046, 4.375], [14, 0.0747, 3.125], [16, 0.0598, 2.5]] as const;
/** 15 U.S.C. 206 (read): gauge number and ounces a square foot. The thickness follows at 41.82 lb/ft² an inch. */
const BY_LAW = [[3, 160], [4, 150], [5, 140], [6, 130], [7, 120], [8, 110], [9, 100], [10, 90], [11, 80], [12, 70], [13, 60], [14, 50], [15, 45], [16, 40], [18, 32], [20, 24]] as const;

test.each(READ)('%i ga is %f in thick and weighs the printed %f lb/ft²', (gauge, thickness, printed) => {
  const sheet = found(`${String(gauge)} ga`);
  expect(sheet.thickness).toBe(thickness);
  expect(sheet.weightPerArea * 144).toBeCloseTo(printed, 10);
  expect(sheet.weightFrom).toBe('gauge-table');
  // The rule of the table: 41.82 lb/ft² an inch, thickness to four decimals.
  expect(Math.abs((sheet.weightPerArea * 144) / 41.82 - thickness)).toBeLessThan(0.0001);
});

test.each(BY_LAW)('%i ga weighs %i oz a square foot', (gauge, ounces) => {
  const sheet = found(`${String(gauge)} ga`);
  expect(sheet.weightPerArea * 144 * 16).toBeCloseTo(ounces, 9);
  expect(Math.abs(sheet.thickness - ounces / 16 / 41.82)).toBeLessThan(0.0001);
});

test('sheet and plate by thickness weigh by density, 40.84 lb/ft² an inch at 0.2836 lb/in³', () => {
  for (const [name, thickness] of [['1/4', 0.25], ['1/4 in', 0.25], ['3 mm', 3 / 25.4], ['6 mm', 6 / 25.4], ['0.105', 0.105]] as const) {
    const sheet = found(name);
    expect(sheet.thickness).toBeCloseTo(thickness, 14);
    expect(sheet.weightPerArea * 144).toBeCloseTo(40.84 * thickness, 2);
    expect(sheet.weightFrom).toBe('density');
  }
});

test('a sheet is one by whatever spaces and case its name is written with', () => {
  for (const name of ['12 ga', '12GA', ' 12  gauge', '12 ga.']) expect(found(name).name).toBe('12 ga');
  expect(found('3mm').name).toBe('3 mm');
});

test.each(['', 'ga', '99 ga', '17.5 ga', '-3 mm', '0 mm', '0', '3 in', '1 m', 'tin', '12 ga 3'])('%j is no sheet', (name) => {
  expect(parseSheet(name)).toBeNull();
});
