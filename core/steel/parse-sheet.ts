import { inches } from '../base/quantity.ts';
import { parseLength } from '../units/index.ts';
import { STEEL_DENSITY } from './density.ts';
import { SHEET_GAUGE } from './tables/sheet-gauge.ts';
import { tidyName } from './tidy-name.ts';
import { type Sheet } from './types.ts';

const LEAST_THICKNESS = 0.01;
const GREATEST_THICKNESS = 2;
const SQUARE_INCHES_PER_FOOT = 144;

/**
 * Sheet or plate by name: `12 ga` (Manufacturers' Standard Gauge; weighs what the gauge table prints, 41.82 lb/ft² an inch),
 * `3 mm`, `1/4`, `1/4 in` (by the density of steel). Null for any other text or an impossible thickness.
 */
export function parseSheet(text: string): Sheet | null {
  if (text.length > 40) return null;
  const name = tidyName(text);
  const gauge = /^(\d+) ga$/.exec(name);
  if (gauge !== null) {
    const row = SHEET_GAUGE.find((entry) => entry.gauge === Number(gauge[1]));
    if (row === undefined) return null;
    return { name, thickness: inches(row.thickness), weightPerArea: row.weight / SQUARE_INCHES_PER_FOOT, weightFrom: 'gauge-table' };
  }
  const thickness = parseLength(name);
  if (thickness === null || thickness < LEAST_THICKNESS || thickness > GREATEST_THICKNESS) return null;
  return { name, thickness, weightPerArea: thickness * STEEL_DENSITY, weightFrom: 'density' };
}
