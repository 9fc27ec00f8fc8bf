import { describe, expect, it } from 'vitest';
import { inches, pounds } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { depthFree, depthHeld, depthNeeded } from '../../core/checks/strength/post-in-ground.ts';
import { postHoleRows } from '../../core/schedules/index.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { laidOut } from '../support/laid-out.ts';
import { findingOf, findingsOf } from './support/checked.ts';

describe('a post in the ground, IBC 1807.3.2.1', () => {
  it('is as deep as a published worked example: 510 lb at 4 ft, 1 ft round, 266 psf a foot (ASCE, Engineering with the Spreadsheet, 2006)', () => {
    const push = { load: 510, height: 4, width: 1 };
    expect(depthNeeded(push, 266, false)).toBeCloseTo(5.02, 2);
    expect(depthNeeded(push, 266, true)).toBeCloseTo(3.19, 2);
  });

  it('takes any units that agree: 1.33 kN at 8 m, 0.849 m wide, S1 fixed at 16.223 kPa gives 1.52 m', () => {
    expect((2.34 * 1.33) / (16.223 * 0.849)).toBeCloseTo(0.226, 3);
    expect(depthFree({ load: 1.33, height: 8, width: 0.849 }, 16.223)).toBeCloseTo(1.52, 2);
  });

  it('is what the formula gives by hand: 300 lb at 3 ft, 1 ft round, 150 psf a foot gives 4.849 ft', () => {
    const depth = depthNeeded({ load: 300, height: 3, width: 1 }, 150, false);
    expect(depth).toBeCloseTo(4.849, 3);
    // The iteration closes on itself: at this depth the formula asks for this depth.
    expect(depthFree({ load: 300, height: 3, width: 1 }, (150 * depth) / 3)).toBeCloseTo(depth, 9);
  });

  it('counts no resistance that grows below 12 ft', () => {
    const push = { load: 60_000, height: 5, width: 1 };
    const depth = depthNeeded(push, 150, true);
    expect(depth).toBeGreaterThan(12);
    expect(depth).toBeCloseTo(depthHeld(push, 150 * 12), 9);
  });
});

describe('the post against the load of the brief', () => {
  const brief = makeBrief();
  const at = (depth: number, soil: Brief['site']['soil'] = 'sand', heldAtSurface = false): Brief => ({
    ...brief,
    site: { ...brief.site, soil },
    footings: { diameter: inches(12), depth: inches(depth) },
    postLoad: { load: pounds(300), height: inches(36), heldAtSurface },
  });

  it('just stands deep enough and just does not: 4.849 ft in sand (IBC Table 1806.2: 150 psf a foot)', () => {
    expect(findingOf(at(58.3), 'footing-load')).toMatchObject({ result: 'ok', measured: 58.3, unit: 'in' });
    const short = findingOf(at(58.1), 'footing-load');
    expect(short).toMatchObject({ result: 'look', measured: 58.1 });
    expect(Number(short.limit.replace('>= ', ''))).toBeCloseTo(4.849 * 12, 1);
    expect(short.where).toBe('35 posts: 4\'-10 1/8", 4\'-10 3/16" needed against 300 lb at 3\'-0"; hole 1\'-0", soil 150 psf/ft (not doubled, IBC 1806.3.4), not held at the surface');
  });

  it('held at the surface it needs less: by hand the cube root of 4.25·300·3/150 ft', () => {
    const needed = Math.cbrt((4.25 * 300 * 3) / 150) * 12;
    expect([needed - 0.01, needed + 0.01].map((depth) => findingOf(at(depth, 'sand', true), 'footing-load').result)).toEqual(['look', 'ok']);
  });

  it('weighs the soil, and asks for it where there is none', () => {
    const needed = (['clay', 'sand', 'gravel', 266] as const).map((soil) => Number(findingOf(at(36, soil), 'footing-load').limit.replace('>= ', '')));
    expect(needed).toEqual([...needed].sort((a, b) => b - a));
    expect(findingOf(at(36, null), 'footing-load')).toMatchObject({ result: 'look', measured: null, where: 'not given: site.soil' });
    expect(findingOf(brief, 'footing-load')).toMatchObject({ result: 'look', measured: null, where: 'no load was given: footings.load' });
  });

  it('judges a pivot post of another depth by itself, and prints in the project\'s units', () => {
    const set: Brief = { ...at(60), units: 'mm', crowdPen: { ...brief.crowdPen, pivotLength: inches(100) } };
    expect(findingsOf(set, 'footing-load').map(({ result, measured }) => [result, measured]).sort()).toEqual([['look', 40], ['ok', 60]]);
    // 150 psf a foot is 23.6 kPa a meter: 150·47.88 Pa / 0.3048 m.
    expect(findingsOf(set, 'footing-load')[0]!.where).toContain('136 kg at 914 mm; hole 305 mm, soil 23.6 kPa/m');
  });
});

describe('concrete in the post holes', () => {
  it('is the hole less the post, for every post: holes of 10 x 30 in hold 1.364 ft3 (a bag maker\'s table)', () => {
    const brief = { ...makeBrief(), footings: { diameter: inches(10), depth: inches(30) } };
    const layout = laidOut(brief);
    const outside = (od: number): number => ((Math.PI / 4) * od ** 2 * 30) / 1728;
    // One pivot post of 4.5 in among posts of 2.875 in.
    const net = layout.posts.length * 1.364 - outside(4.5) - (layout.posts.length - 1) * outside(2.875);
    const [concrete, premix] = postHoleRows(brief, layout);
    expect(concrete).toMatchObject({ item: 'concrete', section: 'post holes', unit: 'yd3', pieces: layout.posts.length });
    expect(concrete!.quantity * 27).toBeCloseTo(net, 1);
    // 80 lb bags of 0.60 ft3 each (bag makers' tables).
    expect(premix).toMatchObject({ item: 'premix', unit: 'bag', quantity: Math.ceil(net / 0.6) });
    expect(postHoleRows({ ...brief, units: 'mm' }, layout)[0]!.quantity).toBeCloseTo(concrete!.quantity * 0.764555, 4);
  });
});
