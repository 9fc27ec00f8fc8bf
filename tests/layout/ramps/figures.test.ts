/** Ramp figures against the worked values of the geometry contract, and by hand where it has none. */
import { describe, expect, it } from 'vitest';
import { degrees, inches, toDegrees } from '../../../core/base/quantity.ts';
import { type RampBrief } from '../../../core/brief/types.ts';
import { lineHeight, rampFigures, type CleatFigures, type StepFigures } from '../../../core/layout/index.ts';

const stepped = (height: number, tread: number) =>
  rampFigures({ dockHeight: inches(height), dockLength: inches(60), surface: { kind: 'stepped', tread: inches(tread) } satisfies RampBrief['surface'] });
const cleated = (height: number, slope: number, cleat: number) =>
  rampFigures({ dockHeight: inches(height), dockLength: inches(120), surface: { kind: 'cleated', slope: degrees(slope), cleat: inches(cleat) } });
const stepsOf = (height: number, tread = 14): StepFigures => stepped(height, tread).surface as StepFigures;
const cleatsOf = (height: number, slope: number, cleat: number): readonly number[] => (cleated(height, slope, cleat).surface as CleatFigures).cleats;

describe('a cleated ramp', () => {
  it('of 48 in at 20° has the run, slope length and cleats of the geometry contract (Worked values)', () => {
    const figures = cleated(48, 20, 2);
    expect(figures.run).toBeCloseTo(131.88, 2);
    expect(figures.slopeLength).toBeCloseTo(140.34, 2);
    expect(cleatsOf(48, 20, 2)).toHaveLength(14);
  });

  it('has its first cleat 8 in up the slope and the others 8 in clear of each other (geometry contract, Ramps)', () => {
    expect(cleatsOf(48, 20, 2).slice(0, 4)).toEqual([8, 18, 28, 38]);
    expect(cleatsOf(48, 20, 3).slice(0, 3)).toEqual([8, 19, 30]);
  });

  it('takes a cleat that just fits whole and leaves out one that does not', () => {
    // A slope length of 70 in at 30°: 7 cleats of 2 in end at 70 in exactly.
    expect(cleatsOf(35, 30, 2)).toHaveLength(7);
    expect(cleatsOf(34.99, 30, 2)).toHaveLength(6);
    expect(cleatsOf(6, 35, 6)).toHaveLength(0);
  });

  it('is followed by its fence from the ground at the foot to the dock', () => {
    const figures = cleated(48, 20, 2);
    expect(lineHeight(figures, 0)).toBe(0);
    expect(lineHeight(figures, 65.94)).toBeCloseTo(24, 3);
    expect(lineHeight(figures, figures.run)).toBe(48);
    expect(lineHeight(figures, 200)).toBe(48);
  });
});

describe('a stepped ramp', () => {
  it('of 48 in has the risers and run of the geometry contract (Worked values)', () => {
    const { run, surface } = stepped(48, 14);
    expect(surface).toMatchObject({ risers: 14 });
    expect(stepsOf(48).riser).toBeCloseTo(3.4286, 4);
    expect(run).toBe(182);
  });

  it('takes no riser more where the height is whole risers of 3 1/2 in, nor where it comes from millimeters', () => {
    expect(stepsOf(49).risers).toBe(14);
    expect(stepsOf(49.001).risers).toBe(15);
    expect(stepsOf(1244.6 / 25.4).risers).toBe(14);
    for (let n = 2; n <= 20; n += 1) expect(stepsOf((n * 88.9) / 25.4).risers).toBe(n);
  });

  it('never has a riser over 3 1/2 in, and its nosings climb from the first riser to the dock', () => {
    for (let height = 6; height <= 72; height += 0.37) expect(stepsOf(height).riser).toBeLessThanOrEqual(3.5 + 1e-9);
    const figures = stepped(48, 14);
    expect(lineHeight(figures, 0)).toBeCloseTo(48 / 14, 9);
    expect(lineHeight(figures, 14 * 6)).toBeCloseTo((48 / 14) * 7, 9);
    expect(lineHeight(figures, 182)).toBe(48);
    // atan(3.4286 / 14), by hand.
    expect(toDegrees(figures.slope)).toBeCloseTo(13.761, 3);
  });
});
