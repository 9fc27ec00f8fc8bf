import { describe, expect, it } from 'vitest';
import { distance } from '../../core/base/points.ts';
import { inches } from '../../core/base/quantity.ts';
import { type Brief, type OpeningBrief, type Side } from '../../core/brief/index.ts';
import { facePoint, layOut, type Backstop, type Fence, type Layout, type ManGate } from '../../core/layout/index.ts';
import { fences, makeBrief } from '../support/brief-builder.ts';
import { fenceOf, laidOut, partsOf } from '../support/laid-out.ts';
import { randomBriefObject } from '../support/random-brief-object.ts';

const manGate = (run: string, side: Side, at: number, width = 14, path = 'openings[0]'): OpeningBrief =>
  ({ kind: 'man-gate', run, side, at: inches(at), width: inches(width), path });
const backstop = (at: number, run = 'chute', path = 'openings[0]'): OpeningBrief => ({ kind: 'backstop', run, at: inches(at), held: 'rope', path });
const withOpenings = (openings: readonly OpeningBrief[], parts: Partial<Brief> = {}): Layout => laidOut({ ...makeBrief(), ...parts, openings });
const first = (layout: Layout): ManGate => layout.openings[0] as ManGate;

describe('a man gate', () => {
  it('parts a straight fence: jamb posts\' sides at half the width, sheet and lapped rails at the jambs, bays between', () => {
    const layout = withOpenings([manGate('alley-1', 'right', 100, 16)]);
    const { spans } = fenceOf(layout, 'alley-1', 'right');
    // Post 2 1/2 sch 40: 2.875 outside. Jambs at 92 and 108.
    expect(spans.map(({ skinFrom, skinTo }) => [skinFrom, skinTo])).toEqual([[0, 92], [108, 240]]);
    expect(spans.map(({ railStops }) => [railStops[0], railStops.at(-1)])).toEqual([[0, 92], [108, 240]]);
    expect(spans[0]!.posts).toEqual([0, 92 - 2.875 / 2]);
    expect(spans[1]!.posts).toEqual([109.4375, (109.4375 + 240) / 2, 240]);
    expect(spans.map(({ firstBay, start, end }) => [firstBay, start.kind, end.kind])).toEqual([[1, 'free', 'jamb'], [3, 'jamb', 'joint']]);
    expect(layout.posts.filter((p) => p.kind === 'jamb-post').map(({ run, side, bay }) => [run, side, bay])).toEqual([['alley-1', 'right', 2], ['alley-1', 'right', 3]]);
    expect(first(layout)).toMatchObject({ bay: 2, from: 92, to: 108, station: null, width: 16 });
  });

  it('leaves its width clear on the face of an arc between radial jambs that the posts touch, on either wall', () => {
    for (const side of ['left', 'right'] as const) {
      const layout = withOpenings([manGate('chute-2', side, 100, 14)]);
      const own = fenceOf(layout, 'chute-2', side);
      const gate = first(layout);
      // The face's own arc: 192 in on the inner wall (right), 220 in on the outer.
      const radius = side === 'right' ? 192 : 220;
      expect(own.faceRadius).toBe(radius);
      expect(2 * Math.asin(distance(facePoint(own, gate.from, 0), facePoint(own, gate.to, 0)) / 2 / radius) * radius).toBeCloseTo(14, 9);
      // From a post's center to the radial line through its jamb: the post's radius.
      for (const [jamb, post] of [[gate.from, own.spans[0]!.posts.at(-1)!], [gate.to, own.spans[1]!.posts[0]!]] as const) {
        const [a, b, p] = [facePoint(own, jamb, 0), facePoint(own, jamb, 10), facePoint(own, post, own.section.k)];
        const off = ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / 10;
        expect(Math.abs(off)).toBeCloseTo(2.875 / 2, 9);
      }
    }
  });

  it('on the chute stands at its station from the mouth', () => {
    // chute-1 is 120 long; 60 in past its end round the 206 in centerline of chute-2.
    const layout = withOpenings([manGate('chute', 'left', 180)]);
    expect(first(layout)).toMatchObject({ run: 'chute-2', station: 180, u: expect.closeTo((60 * 220) / 206, 9) as number });
  });

  it('hangs on the jamb that the cattle pass first and turns to their side, clear of the free jamb', () => {
    for (const [run, side] of [['alley-1', 'left'], ['alley-1', 'right'], ['crowd-pen', 'right'], ['chute-2', 'left'], ['chute-2', 'right']] as const) {
      const layout = withOpenings([manGate(run, side, 100)]);
      const own = fenceOf(layout, run, side);
      const { swing, from, to } = first(layout);
      expect(distance(swing.pin, facePoint(own, from, 0))).toBeLessThan(distance(swing.pin, facePoint(own, to, 0)));
      const tip = (angle: number) => ({ x: swing.pin.x + swing.reach * Math.cos(angle), y: swing.pin.y + swing.reach * Math.sin(angle) });
      expect(distance(tip(swing.shut), facePoint(own, to, own.section.t))).toBeLessThan(1.5);
      const open = tip(swing.shut + swing.turn);
      const inward = facePoint(own, from, -10);
      expect(distance(open, inward)).toBeLessThan(distance(open, facePoint(own, from, 10)));
    }
  });

  it('with coped rails ends them on the jamb posts', () => {
    const layout = withOpenings([manGate('alley-1', 'right', 100, 16)], { fences: fences({ construction: 'coped' }) });
    const { spans } = fenceOf(layout, 'alley-1', 'right');
    expect(spans[0]!.railStops.at(-1)).toBe(92 - 2.875 / 2);
    expect(spans[0]!.skinTo).toBe(92);
  });

  it('where there is no fence, or beyond the run, is a fault with its path', () => {
    const faults = (opening: OpeningBrief) => {
      const result = layOut({ ...makeBrief(), openings: [opening] });
      return result.ok ? [] : result.faults.map(({ path, code }) => `${path} ${code}`);
    };
    expect(faults(manGate('crowd-pen', 'left', 100))).toEqual(['openings[0].side fault.opening-fence']);
    expect(faults(manGate('alley-1', 'left', 241))).toEqual(['openings[0].at fault.opening-beyond']);
    expect(faults(backstop(120 + 206 * Math.PI / 2 + 72.01))).toEqual(['openings[0].at fault.opening-beyond']);
    expect(faults(backstop(73, 'chute-3'))).toEqual(['openings[0].at fault.opening-beyond']);
    expect(faults(manGate('crowd-pen', 'right', 144 * Math.PI + 1))).toEqual(['openings[0].at fault.opening-beyond']);
  });
});

describe('a backstop', () => {
  it('puts a post on both sides at its station, and bays divide the rest', () => {
    const layout = withOpenings([backstop(96)]);
    expect(fenceOf(layout, 'chute-1', 'right').spans[0]!.posts).toEqual([0, 96, 120]);
    expect(fenceOf(layout, 'chute-1', 'left').spans[0]!.posts.slice(1)).toEqual([96, 120]);
    const [own] = layout.openings as readonly Backstop[];
    expect(own).toMatchObject({ run: 'chute-1', station: 96, width: 28, held: 'rope', sides: { left: { u: 96, bay: 2 }, right: { u: 96, bay: 2 } } });
    // The mouth lies at x 130 on the centerline (radius 144 less half of 28).
    expect(own!.at.x).toBeCloseTo(130, 9);
  });

  it('in a curve stands square to the centerline', () => {
    const layout = withOpenings([backstop(200)]);
    const { at, sides } = layout.openings[0] as Backstop;
    const reach = distance(sides.left.post, sides.right.post);
    expect(distance(at, sides.left.post) + distance(at, sides.right.post)).toBeCloseTo(reach, 6);
    // The posts' centers stand k = 3.9171 outward of each face.
    expect(reach).toBeCloseTo(28 + 2 * 3.9171, 3);
  });

  it('at a run\'s end takes the post that stands there', () => {
    const layout = withOpenings([backstop(120)]);
    const without = withOpenings([]);
    expect(layout.posts).toEqual(without.posts);
    expect(layout.openings[0]).toMatchObject({ run: 'chute-2', station: 120, sides: { left: { u: 0, bay: 1 }, right: { u: 0, bay: 1 } } });
    expect(layout.fouls).toEqual([]);
  });
});

describe('an opening that lies over something', () => {
  const told = (...openings: readonly OpeningBrief[]) => withOpenings(openings).fouls.map(({ kind, openings: names, measured }) => [kind, names?.path, names?.other, Number(measured.toFixed(6))]);

  it('clears the end of its run by a post and half an inch, and one that does not is a foul and is left out', () => {
    // Jamb post's center 7 + 1.4375 in before the middle; the end post's center at 0; least apart 2.875 + 0.5.
    const just = 7 + 1.4375 + 3.375;
    expect(told(manGate('alley-1', 'left', just))).toEqual([]);
    expect(told(manGate('alley-1', 'left', just - 0.01))).toEqual([['foul-opening', 'openings[0]', null, 0.01]]);
    const layout = withOpenings([manGate('alley-1', 'left', just - 0.01)]);
    expect(layout.openings).toEqual([]);
    expect(layout.posts).toEqual(withOpenings([]).posts);
  });

  it('clears another opening by as much; the later one in the brief is left out', () => {
    const apart = 14 + 2.875 + 3.375;
    const pair = (gap: number) => told(manGate('alley-1', 'right', 100), manGate('alley-1', 'right', 100 + gap, 14, 'openings[1]'));
    expect(pair(apart)).toEqual([]);
    expect(pair(apart - 0.02)).toEqual([['foul-opening', 'openings[1]', 'openings[0]', 0.02]]);
    expect(told(backstop(60), manGate('chute', 'left', 60, 14, 'openings[1]'))).toEqual([['foul-opening', 'openings[1]', 'openings[0]', expect.any(Number)]]);
  });

  it('a backstop beside the mouth\'s corner post is left out on both sides', () => {
    const layout = withOpenings([backstop(3)]);
    expect(layout.fouls).toEqual([expect.objectContaining({ kind: 'foul-opening', openings: { path: 'openings[0]', other: null } })]);
    expect(layout.posts).toEqual(withOpenings([]).posts);
  });
});

describe('openings of any brief', () => {
  it('leave nothing between their jambs, have a bay of their own, and stand or are told', () => {
    let [gates, backstops, fouled] = [0, 0, 0];
    for (let seed = 0; seed < 300; seed++) {
      const brief = randomBriefObject(seed);
      const result = layOut(brief);
      if (!result.ok) continue;
      const { layout } = result;
      const left = layout.fouls.filter(({ kind }) => kind === 'foul-opening');
      expect(layout.openings.length + left.length).toBe(brief.openings.length + brief.holdingPens.length + brief.sortPens.length);
      fouled += left.length;
      for (const one of layout.openings) {
        if (one.kind === 'backstop') {
          backstops++;
          for (const side of ['left', 'right'] as const) {
            const own = fenceOf(layout, one.run, side);
            expect(own.spans.flatMap(({ posts }) => posts).filter((u) => Math.abs(u - one.sides[side].u) < 1e-6)).toHaveLength(1);
          }
        }
        if (one.kind !== 'man-gate') continue;
        gates++;
        const own: Fence = fenceOf(layout, one.run, one.side);
        expect(own.spans.some(({ firstBay, posts }) => one.bay >= firstBay && one.bay < firstBay + posts.length - 1)).toBe(false);
        const over = (from: number, to: number): number => Math.min(to, one.to) - Math.max(from, one.from);
        for (const span of own.spans) expect(over(span.skinFrom, span.skinTo), `${String(seed)} ${one.path}`).toBeLessThan(1e-6);
        const posts = layout.posts.filter((p) => p.run === one.run && p.side === one.side);
        for (const post of posts) expect(over(post.u, post.u)).toBeLessThan(1e-6);
      }
    }
    expect(Math.min(gates, backstops, fouled)).toBeGreaterThan(30);
  });

  it('keep rails and skins out of the opening', () => {
    const layout = withOpenings([manGate('alley-1', 'right', 100, 16)]);
    const pieces = partsOf({ ...makeBrief(), openings: [manGate('alley-1', 'right', 100, 16)] }).pieces.filter((p) => p.run === 'alley-1' && p.side === 'right');
    for (const { place, key } of pieces) {
      if (place.kind === 'rail' || place.kind === 'skin') expect(Math.min(place.to, 108) - Math.max(place.from, 92), key).toBeLessThanOrEqual(0);
    }
    expect(layout.openings).toHaveLength(1);
  });
});
