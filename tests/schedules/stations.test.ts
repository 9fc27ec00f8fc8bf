import { describe, expect, it } from 'vitest';
import { planPoint } from '../../core/base/points.ts';
import { stations } from '../../core/schedules/index.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { randomWorked, work } from './project.ts';

const example = (): ReturnType<typeof stations> => {
  const { brief, layout } = work(makeBrief());
  return stations(brief, layout);
};
const run = (name: string): ReturnType<typeof stations>['runs'][number] => example().runs.find((each) => each.run === name)!;

describe('the stations', () => {
  // The package contract's own sample: 120 in straight, then 90° right at 192 in inside, 28 in wide.
  it('hold the sample of the contract', () => {
    const { start, end, ...rest } = run('chute-2');
    expect(rest).toEqual({
      run: 'chute-2', kind: 'arc', from: 120, length: 323.5840433197487, insideRadius: 192, centerlineRadius: 206, angleDeg: 90, hand: 'right',
      headingStartDeg: 90, headingEndDeg: 0,
    });
    // The mouth is at (R - w/2, m), m = (R - w) / tan 30°; the arc's center lies 206 in to the right of its start.
    const m = (144 - 28) / Math.tan(Math.PI / 6);
    expect(start[0]).toBeCloseTo(130, 9);
    expect(start[1]).toBeCloseTo(m + 120, 9);
    expect(end[0]).toBeCloseTo(130 + 206, 9);
    expect(end[1]).toBeCloseTo(m + 120 + 206, 9);
  });

  it('have the mouth, the control points and every run in the order of the walk', () => {
    const { mouth, control, runs } = example();
    expect(mouth[0]).toBeCloseTo(130, 9);
    expect(mouth[1]).toBeCloseTo(200.9179, 4);
    expect(control).toEqual({ a: [0, 0], b: [240, 0] });
    expect(runs.map((each) => each.run)).toEqual(['alley-1', 'crowd-pen', 'junction', 'chute-1', 'chute-2', 'chute-3']);
  });

  it('give the crowd pen its face radius and no centerline', () => {
    expect(run('crowd-pen')).toMatchObject({
      kind: 'arc', from: null, insideRadius: 144, centerlineRadius: null, angleDeg: 180, hand: 'left', headingStartDeg: -90, headingEndDeg: 90,
    });
  });

  it('leave radii, angle and hand out of a straight run, and the station out of a run off the chute', () => {
    const straight = { kind: 'straight', insideRadius: null, centerlineRadius: null, angleDeg: null, hand: null };
    expect(run('alley-1')).toMatchObject({ ...straight, from: null, length: 240 });
    expect(run('junction')).toMatchObject({ ...straight, from: null });
    expect(run('chute-1')).toMatchObject({ ...straight, from: 0, length: 120 });
    expect(run('chute-3')).toMatchObject({ ...straight, length: 72 });
    expect(run('chute-3').from).toBeCloseTo(120 + 206 * (Math.PI / 2), 9);
  });

  it('name a third control point where there is one', () => {
    const { brief, layout } = work(makeBrief());
    const three = { ...brief, control: { ...brief.control, c: planPoint(5, 7) } };
    expect(stations(three, layout).control).toEqual({ a: [0, 0], b: [240, 0], c: [5, 7] });
  });

  it('keep every heading in (-180, 180], the chord of every run between its headings, and no negative zero', () => {
    for (const { brief, layout } of randomWorked(60)) {
      for (const each of stations(brief, layout).runs) {
        for (const value of [each.headingStartDeg, each.headingEndDeg]) {
          expect(value).toBeGreaterThan(-180);
          expect(value).toBeLessThanOrEqual(180);
        }
        expect(Object.values(each).flat().some((value) => Object.is(value, -0))).toBe(false);
        const turn = (each.headingEndDeg - each.headingStartDeg) * (Math.PI / 180);
        const asked = ((each.angleDeg ?? 0) * Math.PI) / 180 * (each.hand === 'right' ? -1 : 1);
        expect(Math.cos(turn)).toBeCloseTo(Math.cos(asked), 9);
        expect(Math.sin(turn)).toBeCloseTo(Math.sin(asked), 9);
        const radius = each.centerlineRadius ?? each.insideRadius;
        const chord = radius === null ? each.length : Math.abs(2 * radius * Math.sin(asked / 2));
        expect(Math.hypot(each.end[0] - each.start[0], each.end[1] - each.start[1])).toBeCloseTo(chord, 6);
      }
    }
  });
});
