/** Catwalks beside ramps: the deck follows the line that the fence follows. Figures by hand from the geometry contract's worked ramps. */
import { describe, expect, it } from 'vitest';
import { degrees, inches, toDegrees } from '../../../core/base/quantity.ts';
import { type Brief, type CatwalkBrief, type FenceBrief, type RampBrief } from '../../../core/brief/types.ts';
import { layOut, type Catwalk } from '../../../core/layout/index.ts';
import { LOAD, UNLOAD, withRamp } from '../../support/ramp-briefs.ts';

const walk = (run: string, parts: Partial<CatwalkBrief> = {}): CatwalkBrief =>
  ({ run, side: 'left', from: inches(0), to: null, width: inches(20), deckHeight: null, path: 'catwalks[0]', ...parts });
const brief = (ramp: RampBrief, parts: Partial<CatwalkBrief> = {}, fence: Partial<FenceBrief> = {}): Brief =>
  ({ ...withRamp(ramp, fence), catwalks: [walk(ramp.name, parts)] });

function stood(of: Brief): Catwalk {
  const result = layOut(of);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.layout.catwalks[0]!;
}
const faults = (of: Brief): readonly string[] => {
  const result = layOut(of);
  return result.ok ? [] : result.faults.map(({ path, code }) => `${path} ${code}`);
};

// Dock 48 in 14 risers of 3.4286 on 14 in: run 182, dock to 242. A fence of 60 has its deck 18 over the nosings.
describe('a catwalk beside a loading ramp of steps', () => {
  const { stretches: [stretch], flights, ...whole } = stood(brief(LOAD));
  const { parts, posts, joints } = stretch!;

  it('is 42 in under the top of its fence all the way: from a riser and 18 in at the foot to 66 in at the dock', () => {
    expect([whole.deckHeight, whole.fenceHeight, whole.highest]).toEqual([18, 60, 66]);
    expect(whole.lowest).toBeCloseTo(48 / 14 + 18, 9);
    for (const { height, u } of posts) expect(height).toBeCloseTo(18 + (u < 182 ? 48 / 14 + (u * 48) / 14 / 14 : 48), 9);
  });

  it('slopes as the nosings do, is level beside the dock, and is never one part across the break', () => {
    for (const { from, to, slope, near, far, heights } of parts) {
      expect(from >= 182 - 1e-9 || to <= 182 + 1e-9).toBe(true);
      const rise = from < 182 ? (48 / 14) * ((to - from) / 14) : 0;
      expect(heights[1] - heights[0]).toBeCloseTo(rise, 9);
      expect(slope).toBeCloseTo(Math.atan2(rise, to - from), 9);
      // As long as it is cut: along the slope.
      expect([near, far]).toEqual([expect.closeTo(Math.hypot(to - from, rise), 9), expect.closeTo(Math.hypot(to - from, rise), 9)]);
    }
    expect(toDegrees(whole.slope)).toBeCloseTo(13.7608, 4);
    expect(parts.map(({ to }) => to).at(-1)).toBe(242);
  });

  it('has one bracket post where the slope breaks, of the steeper slope', () => {
    const at = posts.filter(({ u }) => Math.abs(u - 182) < 1e-6);
    expect(at).toHaveLength(1);
    expect(toDegrees(at[0]!.slope)).toBeCloseTo(13.7608, 4);
    expect(joints.every(({ u }) => posts.every((post) => post.u !== u))).toBe(true);
  });

  it('has steps in line at its foot, square to a level landing at its dock, each of equal risers to the deck there', () => {
    const [foot, top] = flights;
    expect([foot!.at, foot!.inLine, foot!.risers, foot!.width]).toEqual(['start', true, 3, 20]);
    expect(foot!.riser).toBeCloseTo((48 / 14 + 18) / 3, 9);
    expect([top!.at, top!.inLine, top!.risers, top!.height]).toEqual(['end', false, 7, 66]);
    expect(top!.riser).toBeCloseTo(66 / 7, 9);
    // The way down at the foot is against the walk, at the top square to it and away from the fence (the ramp climbs along +y, the deck on its left).
    expect(Math.cos(foot!.heading + Math.PI / 2)).toBeCloseTo(1, 9);
    expect(Math.cos(top!.heading - Math.PI)).toBeCloseTo(1, 9);
    const [landing] = parts.filter((part) => part.landing !== null);
    expect([landing!.slope, landing!.to - landing!.from, landing!.landing]).toEqual([0, 22, 'end']);
  });

  it('has a guard along all of it where its highest place asks for one: a dock of 30 in brings the deck to 48', () => {
    expect(stood(brief({ ...LOAD, dockHeight: inches(29.9) })).guarded).toBe(false);
    expect(stood(brief({ ...LOAD, dockHeight: inches(30) })).guarded).toBe(true);
  });
});

describe('a catwalk beside an unloading ramp', () => {
  // Dock 48 at 20°: run 131.88; the dock's 120 come first.
  it('falls as the cattle walk', () => {
    const { stretches: [stretch], flights } = stood(brief(UNLOAD));
    const last = stretch!.parts.at(-1)!;
    expect(toDegrees(last.slope)).toBeCloseTo(-20, 9);
    expect(last.heights[1]).toBeCloseTo(18, 9);
    expect(stretch!.parts[0]!.heights).toEqual([66, 66]);
    expect(flights.map(({ at, inLine, height }) => [at, inLine, Number(height.toFixed(6))])).toEqual([['start', false, 66], ['end', true, 18]]);
  });
});

describe('what cannot be built beside a ramp', () => {
  const cleated: RampBrief = { ...LOAD, surface: { kind: 'cleated', slope: degrees(20), cleat: inches(2) } };

  it('a deck whose steel would lie in the ground at its low end: 3/16 and 2 in of it along the slope, 3 in of bracket, 2 in of air', () => {
    const least = 2.1875 / Math.cos((20 * Math.PI) / 180) + 5;
    expect(faults(brief(cleated, { deckHeight: inches(least + 0.001) }))).toEqual([]);
    expect(faults(brief(cleated, { deckHeight: inches(least - 0.001) }))).toEqual(['catwalks[0].deckHeight fault.catwalk-low']);
    // Level with the dock, and beside it alone, it stands high enough.
    expect(faults(brief(cleated, { deckHeight: inches(0), from: inches(48 / Math.tan((20 * Math.PI) / 180)) }))).toEqual([]);
  });

  it('an end less than 4 in from the edge of the dock, but on it', () => {
    const ends = [178, 178.1, 182, 185.9, 186];
    expect(ends.map((from) => faults(brief(LOAD, { from: inches(from) })).join())).toEqual(
      ['', 'catwalks[0].from fault.catwalk-break', '', 'catwalks[0].from fault.catwalk-break', '']);
  });

  it('steps in line that would stand behind the dock, where the truck does', () => {
    // Its end is 66 over the ground at the edge of a dock of 60: seven treads of 10 are longer.
    const to = inches(182);
    expect(faults(brief({ ...LOAD, dockLength: inches(70) }, { to }))).toEqual([]);
    expect(faults(brief({ ...LOAD, dockLength: inches(69.9) }, { to }))).toEqual(['catwalks[0].to fault.catwalk-truck']);
    expect(faults(brief({ ...UNLOAD, dockLength: inches(0) }))).toEqual(['catwalks[0].from fault.catwalk-truck']);
  });

  it('a dock too short for a landing', () => {
    expect(faults(brief({ ...LOAD, dockLength: inches(12) }))).toEqual([]);
    expect(faults(brief({ ...LOAD, dockLength: inches(11.9) }))).toEqual(['catwalks[0].from fault.catwalk-short']);
  });
});

describe('a ramp that nobody placed', () => {
  it('leaves ground for the catwalk of the one beside it, steps included', () => {
    const two = withRamp(LOAD);
    const second: RampBrief = { ...UNLOAD, path: 'ramps[1]' };
    const result = layOut({ ...two, ramps: [LOAD, second], catwalks: [walk('load-1', { side: 'right', width: inches(60) }), { ...walk('unload-1'), width: inches(60), path: 'catwalks[1]' }] });
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    expect(result.layout.fouls).toEqual([]);
  });
});
