/**
 * Source of the expected figures: the geometry contract's table of worked values (R 144, w 28, f 30°, S 180°, 12 ga sheet, 2 in rails and
 * 2 1/2 in posts of Schedule 40 pipe, lapped), printed there to four decimals.
 */
import { describe, expect, it } from 'vitest';
import { lengthAtOffset } from '../../core/layout/index.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { fenceOf, laidOut } from '../support/laid-out.ts';

const layout = laidOut(makeBrief());
const pen = fenceOf(layout, 'crowd-pen', 'right');
const funnel = fenceOf(layout, 'junction', 'left');
const chute = fenceOf(layout, 'chute-1', 'left');

describe('the worked values of the geometry contract', () => {
  it('hold for the build-up: t 0.1046, d 2.375, D 2.875, k_r 1.2921, k 3.9171', () => {
    expect(pen.section).toMatchObject({ t: 0.1046, d: 2.375, D: 2.875 });
    expect(pen.section.kr).toBeCloseTo(1.2921, 10);
    expect(pen.section.k).toBeCloseTo(3.9171, 10);
  });

  it('hold for the junction: m 200.9179, funnel face 232.0000', () => {
    expect(layout.mouthDistance).toBeCloseTo(200.9179, 4);
    expect(layout.funnelLength).toBeCloseTo(232, 4);
  });

  it('hold for the crowd fence: rail radius 145.2921 and its arc 456.4486; post line 464.6950 in 5 bays', () => {
    expect(lengthAtOffset(pen, 0, pen.length, pen.section.kr)).toBeCloseTo(456.4486, 4);
    expect(lengthAtOffset(pen, 0, pen.length, pen.section.kr) / Math.PI).toBeCloseTo(145.2921, 4);
    // The table's 464.6950 is π · 147.9170; with its own k of 3.9171 the line is π · 147.9171 = 464.69527, 0.0003 in more.
    expect(lengthAtOffset(pen, 0, pen.length, pen.section.k)).toBeCloseTo(464.695, 3);
    expect(lengthAtOffset(pen, 0, pen.length, pen.section.k)).toBeCloseTo(3.14159265359 * 147.9171, 6);
    expect(pen.spans[0]!.posts).toHaveLength(6);
  });

  it('hold for the corner at the pivot post: u0 22.10', () => {
    expect(layout.pivotGap.funnel).toBeCloseTo(22.1, 2);
    expect(layout.pivotGap.alley).toBeCloseTo(22.1, 2);
    expect(funnel.spans[0]!.posts[0]).toBe(layout.pivotGap.funnel);
  });

  it('hold for the corner at the mouth: post 1.0496 and mitre 0.3462 past station 0, as much short of the mouth on the funnel', () => {
    expect(chute.spans[0]!.posts[0]).toBeCloseTo(1.0496, 4);
    expect(chute.spans[0]!.railStops[0]).toBeCloseTo(0.3462, 4);
    expect(funnel.length - funnel.spans[0]!.posts.at(-1)!).toBeCloseTo(1.0496, 4);
    expect(funnel.length - funnel.spans[0]!.railStops.at(-1)!).toBeCloseTo(0.3462, 4);
    expect(chute.spans[0]!.start).toMatchObject({ kind: 'mitre', toward: 'left', mitre: expect.closeTo(Math.PI / 12, 12) });
  });
});
