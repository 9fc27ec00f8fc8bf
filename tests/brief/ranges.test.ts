import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readBrief } from '../../core/brief/index.ts';
import { changed, leastProject, put, type Change } from '../support/change-project.ts';

/**
 * The table of ranges of the project contract, both ends allowed: where the field stands, the least, the greatest, its unit, and what else
 * the project must say for the field to stand there. Copied here so that a slip in the code's own table shows.
 */
type Unit = 'in' | 'lb' | 'plain' | 'whole';
type Row = readonly [path: string, least: number, greatest: number, unit: Unit, around?: readonly Change[]];
const OPENING = { kind: 'man-gate', run: 'chute', side: 'left', at: 60, width: 14 };
const CATWALK = { run: 'chute', side: 'left', from: 0, to: 60, width: 20 };
const RAMP = { kind: 'load' };
const PAD = { length: 144, width: 120, roof: { length: 288, width: 240, daylight: 0.2 } };
const ARC: Change = ['chute.runs', [{ kind: 'arc', insideRadius: 192, angle: 90, hand: 'left' }]];
/** A fence on which every height from 36 up stands with two rails, and every number of rails at 96. */
const TWO_RAILS: readonly Change[] = [['fences.crowdPen.rails', 2], ['fences.crowdPen.sheet', null]];
const TALL: readonly Change[] = [['fences.crowdPen.height', 96], ['fences.crowdPen.rails', 2], ['fences.crowdPen.sheet', null]];

const ROWS: readonly Row[] = [
  ['crowdPen.radius', 72, 240, 'in'],
  ['crowdPen.sweep', 90, 240, 'plain'],
  ['crowdPen.gateClearance', 0.25, 6, 'in'],
  ['crowdPen.funnelAngle', 10, 90, 'plain'],
  ['chute.width', 14, 40, 'in'],
  ['chute.runs[0].length', 12, 2400, 'in'],
  ['alley.runs[0].length', 12, 2400, 'in', [['alley.runs', [{ kind: 'straight', length: 100 }]]]],
  ['chute.runs[0].insideRadius', 60, 1200, 'in', [ARC]],
  ['chute.runs[0].angle', 5, 270, 'plain', [ARC]],
  ['fences.crowdPen.height', 36, 96, 'in', TWO_RAILS],
  ['fences.crowdPen.solidTo', 0, 96, 'in', TALL],
  ['fences.crowdPen.solidFrom', 0, 24, 'in'],
  ['fences.crowdPen.rails', 2, 12, 'whole', TALL],
  ['fences.crowdPen.bottomRail', 4, 36, 'in', TALL],
  ['fences.crowdPen.postSpacing', 24, 144, 'in'],
  ['footings.diameter', 4, 48, 'in'],
  ['footings.depth', 12, 120, 'in'],
  ['openings[0].width', 10, 240, 'in', [['openings', [OPENING]]]],
  ['catwalks[0].width', 12, 60, 'in', [['catwalks', [CATWALK]]]],
  ['catwalks[0].deckHeight', 0, 72, 'in', [['catwalks', [CATWALK]]]],
  ['ramps[0].dockHeight', 6, 72, 'in', [['ramps', [RAMP]]]],
  ['ramps[0].width', 18, 240, 'in', [['ramps', [RAMP]]]],
  ['ramps[0].slope', 2, 35, 'plain', [['ramps', [RAMP]]]],
  ['ramps[0].tread', 10, 24, 'in', [['ramps', [RAMP]]]],
  ['ramps[0].dockLength', 0, 480, 'in', [['ramps', [RAMP]]]],
  ['ramps[0].cleat', 1, 6, 'in', [['ramps', [RAMP]]]],
  ['shop.springback', 0, 0.3, 'plain'],
  ['shop.kerf', 0, 1, 'in'],
  ['shop.weldGap', 0, 1, 'in'],
  ['shop.grip', 0, 48, 'in'],
  ['shop.welds.fillet', 0.0625, 0.5, 'in'],
  ['shop.welds.skinLength', 0.5, 12, 'in'],
  ['shop.welds.skinPitch', 1, 48, 'in', [['shop', { welds: { skinLength: 1 } }]]],
  ['shop.welds.efficiency', 0.3, 1, 'plain'],
  ['shop.truck.length', 60, 720, 'in'],
  ['shop.truck.width', 36, 144, 'in'],
  ['shop.truck.load', 200, 100_000, 'lb'],
  ['shop.handLift', 10, 200, 'lb'],
  ['site.latitude', -66, 66, 'plain'],
  ['site.longitude', -180, 180, 'plain'],
  ['site.bearing', 0, 360, 'plain'],
  ['cattle.weight', 150, 3000, 'lb'],
  ['cattle.bodyLength', 36, 130, 'in'],
  ['cattle.eyeHeight', 20, 72, 'in'],
  ['cattle.headPerDay', 1, 20000, 'whole'],
  ['shop.gaugeChord', 6, 96, 'in'],
  ['shop.stock.wide[0]', 60, 960, 'in', [['shop', { sections: { wide: '2.2 x 0.2' }, stock: { wide: [100] } }]]],
  ['shop.sheets[0][1]', 12, 240, 'in', [['shop.sheets', [[48, 96]]]]],
  ['squeezePad.length', 48, 1200, 'in', [['squeezePad', PAD]]],
  ['squeezePad.width', 48, 1200, 'in', [['squeezePad', PAD]]],
  ['squeezePad.roof.length', 48, 1200, 'in', [['squeezePad', PAD]]],
  ['squeezePad.roof.width', 48, 1200, 'in', [['squeezePad', PAD]]],
  ['squeezePad.roof.daylight', 0, 1, 'plain', [['squeezePad', PAD]]],
  ['floors.fall', 0, 0.1, 'plain'],
  ['floors.thickness', 3, 12, 'in'],
];

/** The code and path of each fault of the least project with one field set. */
function faults(row: Row, value: unknown): readonly string[] {
  const project = (row[4] ?? []).reduce(put, leastProject());
  // A copy: a row's own groups are used again.
  const result = readBrief(changed(JSON.parse(JSON.stringify(project)) as Record<string, unknown>, [row[0], value]));
  return result.ok ? [] : result.faults.map(({ path, code }) => `${path} ${code}`);
}
const millimeters = (value: number): string => `${String(Number((value * 25.4).toFixed(6)))} mm`;

describe.each(ROWS)('%s from %f to %f (%s)', (...row) => {
  const [path, least, greatest, unit] = row as unknown as Row;

  test('both ends are allowed, in millimeters too', () => {
    for (const end of [least, greatest]) {
      expect(faults(row as unknown as Row, end)).toEqual([]);
      if (unit === 'in' && end >= 0) expect(faults(row as unknown as Row, millimeters(end))).toEqual([]);
    }
  });

  test('just outside is a fault that names the path', () => {
    const step = unit === 'whole' ? 1 : 1e-6;
    for (const outside of [least - step, greatest + step]) expect(faults(row as unknown as Row, outside)).toContain(`${path} fault.range`);
  });

  test('everything between is allowed', () => {
    const parts = unit === 'whole' ? 1 : 16;
    fc.assert(fc.property(fc.integer({ min: Math.ceil(least * parts), max: Math.floor(greatest * parts) }), (count) => {
      const value = count / parts;
      expect(faults(row as unknown as Row, value)).toEqual([]);
    }), { seed: 7, numRuns: 40 });
  });
});

test('counts of things: 1 to 40 runs; up to 100 openings, catwalks, ramps and pens; title and notes', () => {
  const run = { kind: 'straight', length: 12 };
  const told = (...changes: readonly Change[]): readonly string[] => {
    const result = readBrief(changed(leastProject(), ...changes));
    return result.ok ? [] : result.faults.map(({ path, code }) => `${path} ${code}`);
  };
  const many = <T>(count: number, thing: T): readonly T[] => Array.from({ length: count }, () => thing);
  for (const field of ['chute.runs', 'alley.runs']) {
    for (const count of [1, 40]) expect(told([field, many(count, run)])).toEqual([]);
    for (const count of [0, 41]) expect(told([field, many(count, run)])).toEqual([`${field} fault.count`]);
  }
  const subjects: readonly (readonly [string, unknown])[] = [
    ['openings', OPENING], ['catwalks', CATWALK], ['ramps', RAMP], ['sortPens', { side: 'left' }], ['holdingPens', { head: 30 }],
  ];
  for (const [field, thing] of subjects) {
    for (const count of [0, 100]) expect(told([field, many(count, thing)])).toEqual([]);
    expect(told([field, many(101, thing)])).toEqual([`${field} fault.count`]);
  }
  expect(told(['title', 'x'.repeat(60)], ['client', 'y'.repeat(60)], ['control.note', 'z'.repeat(200)], ['revision.note', 'z'.repeat(200)])).toEqual([]);
  expect(told(['title', '🐂'.repeat(60)])).toEqual([]);
  expect(told(['title', '🐂'.repeat(61)])).toEqual(['title fault.characters']);
});

test('the width of the chute is less than the radius for every two that are in range', () => {
  const greatestWidth = 40;
  const leastRadius = 72;
  const result = readBrief(changed(leastProject(), ['chute.width', greatestWidth], ['crowdPen.radius', leastRadius]));
  expect(result.ok && result.brief.chute.width < result.brief.crowdPen.radius).toBe(true);
});
