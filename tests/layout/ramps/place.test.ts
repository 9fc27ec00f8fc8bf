import { describe, expect, it } from 'vitest';
import { planPoint, type Vec } from '../../../core/base/points.ts';
import { degrees, inches } from '../../../core/base/quantity.ts';
import { type RampBrief } from '../../../core/brief/types.ts';
import { placeRamps } from '../../../core/layout/ramps/place-ramps.ts';

const LOAD: RampBrief = {
  name: 'load-1', kind: 'load', dockHeight: inches(48), width: inches(30), dockLength: inches(60), surface: { kind: 'stepped', tread: inches(14) },
  at: null, heading: null, path: 'ramps[0]',
};
const UNLOAD: RampBrief = {
  ...LOAD, name: 'unload-1', kind: 'unload', width: inches(120), dockLength: inches(120), surface: { kind: 'cleated', slope: degrees(20), cleat: inches(2) }, path: 'ramps[1]',
};
const GROUND = { taken: { left: -150, bottom: -200, right: 160, top: 500 }, hand: 'left', depth: () => inches(6) } as const;
const place = (briefs: readonly RampBrief[], hand: 'left' | 'right' = 'left') => placeRamps(briefs, { ...GROUND, hand });
const ends = (ramp: ReturnType<typeof place>[number]): readonly Vec[] => (ramp.run.path.kind === 'line' ? [ramp.run.path.a, ramp.run.path.b] : []);

describe('a ramp', () => {
  it('with a place lies there: a loading ramp ahead of the middle of its low end, an unloading one behind it (geometry contract, Ramps)', () => {
    const at = planPoint(700, 40);
    const [load] = place([{ ...LOAD, at, heading: degrees(0) }]);
    const [unload] = place([{ ...UNLOAD, at, heading: degrees(0) }]);
    expect(ends(load!)).toEqual([{ x: 700, y: 40 }, { x: 700 + 182 + 60, y: 40 }]);
    const [from, to] = ends(unload!);
    expect(from!.x).toBeCloseTo(700 - 131.8788 - 120, 3);
    expect(to).toEqual({ x: 700, y: 40 });
  });

  it('without one stands beside all that is there, its dock toward +y, the next beside it', () => {
    const [load, unload] = place([LOAD, UNLOAD]);
    const [loadX, unloadX] = [load!.at.x, unload!.at.x];
    expect(loadX - 15 - 6).toBeGreaterThan(160);
    expect(unloadX - 60 - 6).toBeGreaterThan(loadX + 15 + 6);
    for (const ramp of [load!, unload!]) {
      expect(ramp.at.y).toBe(0);
      expect(Math.max(...ends(ramp).map(({ y }) => y))).toBeCloseTo(ramp.length, 9);
    }
    expect(load!.heading).toBeCloseTo(Math.PI / 2, 9);
    expect(unload!.heading).toBeCloseTo(-Math.PI / 2, 9);
  });

  it('without one stands clear of one that has a place, whichever is named first', () => {
    const [placed, free] = place([{ ...LOAD, at: planPoint(400, 0) }, { ...LOAD, name: 'load-2' }]);
    expect(placed!.at.x).toBe(400);
    expect(free!.at.x).toBeGreaterThan(400 + 30 + 12);
    const [first, second] = place([LOAD, { ...LOAD, name: 'load-2', at: planPoint(400, 0) }]);
    expect(second!.at.x).toBe(400);
    expect(first!.at.x).toBeGreaterThan(400 + 30 + 12);
  });

  it('stands on the other side where the pen turns the other way', () => {
    const mirrored = placeRamps([LOAD, UNLOAD], { ...GROUND, taken: { ...GROUND.taken, left: -160, right: 150 }, hand: 'right' });
    expect(mirrored.map(({ at }) => 0 - at.x)).toEqual(place([LOAD, UNLOAD]).map(({ at }) => at.x));
  });
});
