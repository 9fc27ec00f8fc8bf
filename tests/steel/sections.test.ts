import { describe, expect, test } from 'vitest';
import { parseSection } from '../../core/steel/index.ts';

const found = (name: string) => {
  const section = parseSection(name);
  if (section === null) throw new Error(`no section: ${name}`);
  return section;
};
const perFoot = (name: string): number => found(name).weightPerInch * 12;

/**
 * ASME B36.10M, Schedule 40 / STD, plain end, from reprints of the standard: nominal, outside, wall, printed lb/ft (a second printing
 * in brackets where it differs). Printings differ by 0.15 %; held to 0.3 %.
 */
const PIPE = [
  ['1', 1.315, 0.133, [1.68]], ['1 1/4', 1.66, 0.14, [2.27]], ['1 1/2', 1.9, 0.145, [2.72]], ['2', 2.375, 0.154, [3.65, 3.66]],
  ['2 1/2', 2.875, 0.203, [5.79, 5.8]], ['3', 3.5, 0.216, [7.58]], ['3 1/2', 4, 0.226, [9.11]], ['4', 4.5, 0.237, [10.79, 10.8]],
  ['5', 5.563, 0.258, [14.62]], ['6', 6.625, 0.28, [18.97, 18.99]],
] as const;
/** The same standard's larger and smaller sizes: a reprint of the B36.10 schedules; 8 and 10 also in Ill. Admin. Code 35-604 O, table A. */
const PIPE_BEYOND = [
  ['1/2', 0.84, 0.109, [0.851]], ['3/4', 1.05, 0.113, [1.131]], ['8', 8.625, 0.322, [28.55]], ['10', 10.75, 0.365, [40.48]], ['12', 12.75, 0.406, [53.53]],
] as const;

describe('Schedule 40 pipe is as ASME B36.10M has it', () => {
  test.each([...PIPE, ...PIPE_BEYOND])('NPS %s: %f in outside, %f in wall', (nominal, outside, wall, printed) => {
    const section = found(`pipe ${nominal} sch 40`);
    expect([section.shape, section.across, section.along, section.wall]).toEqual(['round', outside, outside, wall]);
    for (const weight of printed) expect(Math.abs(perFoot(section.name) / weight - 1)).toBeLessThan(0.003);
  });

  test('a size that is not made is no section', () => {
    for (const nominal of ['7', '2 1/4', '0', '9']) expect(parseSection(`pipe ${nominal} sch 40`)).toBeNull();
    expect(parseSection('pipe 2 sch 80')).toBeNull();
  });
});

test('used oilfield tubing weighs plain end: API 5CT sizes; the calculated 4.434 and 6.160 lb/ft are 10.68·(OD - wall)·wall, so held to 0.3 %', () => {
  expect(Math.abs(perFoot('tubing 2 3/8 x 0.190') / 4.434 - 1)).toBeLessThan(0.003);
  expect(Math.abs(perFoot('tubing 2 7/8 x 0.217') / 6.16 - 1)).toBeLessThan(0.003);
  // The nominal weights count upsets and couplings: a cut piece is lighter.
  expect(perFoot('tubing 2 3/8 x 0.190')).toBeLessThan(4.7);
  expect(perFoot('tubing 2 7/8 x 0.217')).toBeLessThan(6.5);
});

test.each([
  ['2 x 2 x 1/8', 3.05], ['2 x 2 x 3/16', 4.32], ['2 x 2 x 1/4', 5.41], ['3 x 3 x 3/16', 6.87], ['4 x 4 x 1/4', 12.21],
] as const)('square tube %s weighs the printed %f lb/ft within 0.3 %% (read in printed tables)', (sizes, printed) => {
  expect(Math.abs(perFoot(`tube ${sizes}`) / printed - 1)).toBeLessThan(0.003);
});

test('a tube with corners is across the fence first, then upright, and weighs the same either way', () => {
  const [flat, tall] = [found('tube 2 x 3 x 3/16'), found('tube 3 x 2 x 3/16')];
  expect([flat.shape, flat.across, flat.along, flat.wall]).toEqual(['rectangular', 2, 3, 0.1875]);
  expect([tall.across, tall.along]).toEqual([3, 2]);
  expect(flat.weightPerInch).toBeCloseTo(tall.weightPerInch, 12);
});

test('metric sizes are millimeters, at 25.4 to the inch', () => {
  const tube = found('tube 60 x 60 x 4 mm');
  expect([tube.across * 25.4, tube.along * 25.4, tube.wall * 25.4].map((size) => size.toFixed(9))).toEqual(['60.000000000', '60.000000000', '4.000000000']);
  const pipe = found('pipe 60.3 x 3.9 mm');
  expect(pipe.shape).toBe('round');
  expect([pipe.across * 25.4, pipe.wall * 25.4].map((size) => size.toFixed(9))).toEqual(['60.300000000', '3.900000000']);
});

test('a section is one by whatever spaces and case its name is written with', () => {
  for (const name of ['pipe 2 1/2 sch 40', ' Pipe  2 1/2   SCH 40 ', 'pipe 2 1/2 sch. 40', 'PIPE 2½ Sch40', 'pipe 2 1/2 schedule 40']) {
    expect(found(name).name).toBe('pipe 2 1/2 sch 40');
  }
  for (const name of ['tube 60x60x4mm', 'Tube 60 X 60 X 4 MM', 'tube 60 × 60 × 4 mm']) expect(found(name).name).toBe('tube 60 x 60 x 4 mm');
  expect(found('tubing 2 3/8 x .190').name).toBe('tubing 2 3/8 x 0.190');
  expect(found('2.375 x 0.154').shape).toBe('round');
});

test('the shop\'s own sections are found by their names', () => {
  const own = new Map([['used 2 3/8', { ...found('2.36 x 0.17'), name: 'used 2 3/8' }]]);
  expect(parseSection('Used  2 3/8', own)?.across).toBe(2.36);
  expect(parseSection('Used  2 3/8')).toBeNull();
});

test.each([
  '', 'pipe', 'pipe 2', 'pipe 2 x', 'tube 2 x 2', 'tubing 2 x 2 x 1/4', 'tubing 2 x 1', 'tubing 2 x 1.2', 'tube 2 x 2 x 3/4', 'pipe 0.2 x 0.05', 'pipe 99 x 1', 'pipe -2 x 0.1',
  'pipe 2 x 0', 'angle 2 x 2 x 1/4', 'pipe NaN x 1', 'constructor', '__proto__', `pipe ${'2'.repeat(80)} sch 40`,
])('%j is no section', (name) => {
  expect(parseSection(name)).toBeNull();
});
