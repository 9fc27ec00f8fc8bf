import { expect, test } from 'vitest';
import { type Brief } from '../../core/brief/types.ts';
import { concreteRows, stations } from '../../core/schedules/index.ts';
import { laidOut } from '../support/laid-out.ts';
import { LOAD, UNLOAD, withRamp } from '../support/ramp-briefs.ts';

/** The floors stand before the ramps. */
const ofRamps = (brief: Brief): ReturnType<typeof concreteRows> => concreteRows(brief, laidOut(brief)).filter(({ section }) => /^(load|unload)-/.test(section));

test('concrete is listed by the cubic yard for each stepped ramp, none for a cleated one', () => {
  const brief = withRamp(LOAD);
  // (312·14 + 48·60)·30 in3 by hand (tests/parts/ramps), 46656 to a cubic yard; 150 lb a cubic foot (from memory).
  const [row, ...more] = ofRamps(brief);
  expect(more).toEqual([]);
  expect(row).toMatchObject({ item: 'concrete', section: 'load-1', unit: 'yd3' });
  expect(row!.quantity).toBeCloseTo(217_440 / 46_656, 9);
  expect(row!.weight).toBeCloseTo((217_440 / 1728) * 150, 6);
  const [metric] = ofRamps({ ...brief, units: 'mm' });
  expect(metric).toMatchObject({ unit: 'm3' });
  expect(metric!.quantity).toBeCloseTo(217_440 * 1.6387064e-5, 9);
  expect(ofRamps(withRamp(UNLOAD))).toEqual([]);
});

test('a ramp is a straight run of the path, last, off the chute', () => {
  const brief = { ...withRamp(LOAD), ramps: [LOAD, UNLOAD] };
  const runs = stations(brief, laidOut(brief)).runs;
  expect(runs.slice(-2).map(({ run }) => run)).toEqual(['load-1', 'unload-1']);
  const [load, unload] = runs.slice(-2);
  expect(load).toMatchObject({ kind: 'straight', from: null, length: 182 + 60, insideRadius: null, hand: null, headingStartDeg: 90 });
  expect(unload!.headingStartDeg).toBe(-90);
  // Both have their low end on the pivot post's level: the one is walked up, the other down.
  expect(load!.start[1]).toBe(0);
  expect(unload!.end[1]).toBe(0);
});
