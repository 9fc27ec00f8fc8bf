import { describe, expect, it } from 'vitest';
import { distance } from '../../core/base/points.ts';
import { degrees, inches } from '../../core/base/quantity.ts';
import { type FenceBrief, type Side } from '../../core/brief/types.ts';
import { facePoint, layOut, type Fence } from '../../core/layout/index.ts';
import { arc, fence, fences, makeBrief, section, sheet, straight } from '../support/brief-builder.ts';
import { fenceOf, laidOut } from '../support/laid-out.ts';
import { mirrorBrief, randomBriefObject } from '../support/random-brief-object.ts';
import { distanceToCurve } from '../support/walk-oracle.ts';

const endOf = (f: Fence): { posts: number; rails: number } => ({ posts: f.spans.at(-1)!.posts.at(-1)!, rails: f.spans.at(-1)!.railStops.at(-1)! });
const both = (one: FenceBrief): Record<Side, FenceBrief> => ({ left: one, right: one });

describe('the corner at the pivot post', () => {
  it('keeps each first post half its size and 1/2 in from the line halfway between the two faces, where both are straight', () => {
    let seen = 0;
    for (let seed = 0; seed < 200; seed++) {
      const brief = randomBriefObject(seed);
      const last = brief.alley.runs.at(-1)!;
      const result = layOut(brief);
      if (!result.ok || last.kind !== 'straight') continue;
      seen++;
      const { hand } = brief.crowdPen;
      const alley = fenceOf(result.layout, `alley-${String(brief.alley.runs.length)}`, hand);
      const funnel = fenceOf(result.layout, 'junction', hand);
      const a = facePoint(alley, endOf(alley).posts, 0);
      const b = facePoint(funnel, funnel.spans[0]!.posts[0]!, 0);
      const wedge = result.layout.pivotWedge;
      // The middle direction, from the funnel's face half the wedge toward the alley's.
      const turn = hand === 'left' ? 1 : -1;
      const middle = Math.atan2(b.y, b.x) + (turn * wedge) / 2;
      expect(Math.cos(Math.atan2(a.y, a.x) - middle)).toBeCloseTo(Math.cos(wedge / 2), 9);
      for (const [own, u] of [[alley, endOf(alley).posts], [funnel, funnel.spans[0]!.posts[0]!]] as const) {
        const at = facePoint(own, u, own.section.k);
        expect(Math.abs(Math.cos(middle) * at.y - Math.sin(middle) * at.x)).toBeCloseTo(own.section.D / 2 + 0.5, 6);
      }
    }
    expect(seen).toBeGreaterThan(40);
  });

  it('takes each fence by its own build', () => {
    const thick = fence('fences.junction', { post: section('pipe 4 sch 40') });
    const layout = laidOut(makeBrief({ fences: { ...fences(), junction: both(thick) } }));
    const [half, size] = [Math.PI / 12, 4.5];
    expect(layout.pivotGap.funnel).toBeCloseTo(((0.1046 + 2.375 + size / 2) * Math.cos(half) + size / 2 + 0.5) / Math.sin(half), 9);
    expect(layout.pivotGap.alley).toBeCloseTo(22.10474, 4);
  });

  it('is closed by plates from the pivot post\'s surface to the first post, less the weld gap', () => {
    const { closingPlates } = laidOut(makeBrief());
    expect(closingPlates.map((p) => [p.run, p.side, p.bay, p.from, p.to, p.thickness])).toEqual([
      ['alley-1', 'left', 3, 2, 60, 0.25],
      ['junction', 'left', 1, 2, 60, 0.25],
    ]);
    // u0 - half of a 4.5 in pipe - 1/8 in.
    for (const plate of closingPlates) {
      expect(plate.width).toBeCloseTo(22.10474 - 2.25 - 0.125, 4);
      expect(distance(plate.a, plate.b)).toBeCloseTo(plate.width, 9);
      expect(Math.hypot(plate.a.x, plate.a.y)).toBeCloseTo(2.25 + 0.0625, 9);
    }
  });

  it('has no plate where less than 1/2 in would be left', () => {
    const straightOn = { sweep: degrees(90), funnelAngle: degrees(90) };
    // A half turn between the faces: u0 = D/2 + 1/2 = 1.9375; a 1 1/4 in pivot of 1.66 in leaves 1.1075 - 0.125.
    const thin = laidOut(makeBrief({ crowdPen: { ...straightOn, pivotPost: section('pipe 1 1/4 sch 40') } }));
    expect(thin.closingPlates.map((p) => p.width)).toEqual([expect.closeTo(0.9825, 6), expect.closeTo(0.9825, 6)]);
    expect(laidOut(makeBrief({ crowdPen: { ...straightOn, pivotPost: section('pipe 2 1/2 sch 40') } })).closingPlates).toEqual([]);
    expect(laidOut(makeBrief({ crowdPen: { ...straightOn, pivotPost: section('pipe 4 sch 40') } })).closingPlates).toEqual([]);
  });
});

describe('the corner at the mouth', () => {
  it('has its post, its rail axes and its sheets each where both lines meet, whatever the builds and the first run', () => {
    const kinds = new Set<string>();
    for (let seed = 0; seed < 250; seed++) {
      const brief = randomBriefObject(seed);
      const result = layOut(brief);
      if (!result.ok) continue;
      const { hand } = brief.crowdPen;
      const [funnel, chute] = [fenceOf(result.layout, 'junction', hand), fenceOf(result.layout, 'chute-1', hand)];
      const post = result.layout.posts.find((p) => p.kind === 'corner-post')!;
      for (const own of [funnel, chute]) expect(distanceToCurve(own.face, post.at)).toBeCloseTo(own.section.k, 4);
      const first = chute.spans[0]!;
      kinds.add(`${first.start.kind} ${chute.faceRadius === null ? 'straight' : 'arc'}`);
      expect(funnel.spans.at(-1)!.end).toEqual(first.start);
      const axis = first.start.kind === 'mitre' ? 'kr' : 'k';
      const meet = (up: number, upOffset: number, down: number, downOffset: number): number =>
        distance(facePoint(funnel, up, upOffset), facePoint(chute, down, downOffset));
      expect(meet(endOf(funnel).rails, funnel.section[axis], first.railStops[0]!, chute.section[axis])).toBeLessThan(1e-6);
      expect(meet(funnel.spans.at(-1)!.skinTo, funnel.section.t / 2, first.skinFrom, chute.section.t / 2)).toBeLessThan(1e-6);
    }
    expect([...kinds].sort()).toEqual(['corner arc', 'corner straight', 'mitre arc', 'mitre straight']);
  });

  it('halves the turn that the rails make there', () => {
    const straightOn = laidOut(makeBrief({ crowdPen: { funnelAngle: degrees(40) } }));
    expect(fenceOf(straightOn, 'chute-1', 'left').spans[0]!.start).toMatchObject({ mitre: expect.closeTo(degrees(20), 12) as number, toward: 'left' });
    const mirrored = laidOut(mirrorBrief(makeBrief({ crowdPen: { funnelAngle: degrees(40) } })));
    expect(fenceOf(mirrored, 'chute-1', 'right').spans[0]!.start).toMatchObject({ mitre: expect.closeTo(degrees(20), 12) as number, toward: 'right' });
  });

  it('has square ends where rows differ in height or a side is coped', () => {
    const taller = fence('fences.chute', { height: inches(66), solidTo: inches(66) });
    const coped = fence('fences.chute', { construction: 'coped' });
    for (const other of [taller, coped]) {
      const layout = laidOut(makeBrief({ fences: { ...fences(), chute: both(other) } }));
      const chute = fenceOf(layout, 'chute-1', 'left').spans[0]!;
      expect(chute.start).toEqual({ kind: 'corner' });
      expect(chute.railStops).toEqual(chute.posts);
    }
    const copedAll = laidOut(makeBrief({ fences: fences({ construction: 'coped' }) }));
    // t + D/2 = 1.5421, times tan 15°.
    expect(fenceOf(copedAll, 'chute-1', 'left').spans[0]!.posts[0]).toBeCloseTo(1.5421 * 0.2679492, 6);
  });

  it('parts the sheets where their mid-thickness lines meet', () => {
    const layout = laidOut(makeBrief({ fences: fences({ sheet: sheet('7 ga') }) }));
    const inset = (0.1793 / 2) * Math.tan(degrees(15));
    expect(fenceOf(layout, 'chute-1', 'left').spans[0]!.skinFrom).toBeCloseTo(inset, 9);
    const funnel = fenceOf(layout, 'junction', 'left');
    expect(funnel.length - funnel.spans[0]!.skinTo).toBeCloseTo(inset, 9);
  });

  it('works with a chute that begins with an arc of either hand', () => {
    for (const hand of ['left', 'right'] as const) {
      const layout = laidOut(makeBrief({ chute: { width: inches(28), runs: [arc(100, 60, hand), straight(60)] } }));
      const post = layout.posts.find((p) => p.kind === 'corner-post')!;
      const center = hand === 'left' ? { x: 144 - 28 - 100, y: layout.mouthDistance } : { x: 144 + 100, y: layout.mouthDistance };
      const radius = hand === 'left' ? 100 - 3.9171 : 128 + 3.9171;
      expect(distance(post.at, center)).toBeCloseTo(radius, 6);
    }
  });
});
