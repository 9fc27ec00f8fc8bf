import { describe, expect, it } from 'vitest';
import { distance, planPoint, unitAt } from '../../core/base/points.ts';
import { figureAt, handles, type Handle } from '../../core/board/index.ts';
import { type Brief, type RampBrief } from '../../core/brief/types.ts';
import { type Layout, layOut } from '../../core/layout/index.ts';
import { randomRampBrief } from '../support/random-ramp-brief.ts';

const laid = Array.from({ length: 60 }, (_, seed) => randomRampBrief(seed)).flatMap((brief) => {
  const result = layOut(brief);
  return result.ok ? [{ brief, layout: result.layout }] : [];
});
const ofRamps = (brief: Brief, layout: Layout): readonly Handle[] => handles(brief, layout).filter(({ path }) => path.startsWith('ramps['));

/** The ramp with one field set to a figure. */
function withFigure(ramp: RampBrief, field: string, value: number): RampBrief {
  if (field === 'at[0]') return { ...ramp, at: planPoint(value, ramp.at!.y) };
  if (field === 'at[1]') return { ...ramp, at: planPoint(ramp.at!.x, value) };
  return { ...ramp, [field]: value };
}

describe('the handles of a ramp', () => {
  it('have at their own place their own figure, and a name each', () => {
    for (const { brief, layout } of laid) {
      const found = ofRamps(brief, layout);
      for (const handle of found) expect(figureAt(handle.drag, handle.at, handle.value), handle.id).toBeCloseTo(handle.value, 8);
      expect(found.filter(({ path }) => path.endsWith('.dockLength'))).toHaveLength(brief.ramps.length);
    }
  });

  it('come to where the hand is when their figure is set to what it asks for', () => {
    let moved = 0;
    for (const { brief, layout } of laid) {
      // One ramp at a time and placed, so that no other moves with it.
      const ramp = brief.ramps.find(({ at }) => at !== null);
      if (ramp === undefined) continue;
      for (const handle of ofRamps({ ...brief, openings: [], ramps: [ramp] }, layout).filter(({ run }) => run === ramp.name)) {
        const step = handle.figure === 'angle' ? 0.5 : 6;
        const hand = planPoint(handle.at.x + step * unitAt(handle.grows).x, handle.at.y + step * unitAt(handle.grows).y);
        const value = figureAt(handle.drag, hand, handle.value);
        expect(value, handle.id).toBeGreaterThan(handle.value);
        if (value > handle.greatest) continue;
        const changed = layOut({ ...brief, openings: [], ramps: [withFigure(ramp, handle.path.replace(/^ramps\[\d+\]\./, ''), value)] });
        if (!changed.ok) continue;
        const after = ofRamps({ ...brief, openings: [], ramps: [ramp] }, changed.layout).find(({ id }) => id === handle.id)!;
        // A hand that moves straight leaves an arc by a hair.
        expect(distance(after.at, hand), handle.id).toBeLessThan(handle.figure === 'angle' ? 0.05 : 1e-6);
        moved += 1;
      }
    }
    expect(moved).toBeGreaterThan(20);
  });
});
