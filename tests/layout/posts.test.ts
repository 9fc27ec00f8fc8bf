import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { layOut, lengthAtOffset, type Fence, type Layout } from '../../core/layout/index.ts';
import { arc, fence, fences, makeBrief, section, straight } from '../support/brief-builder.ts';
import { fenceOf, laidOut } from '../support/laid-out.ts';
import { randomBriefObject } from '../support/random-brief-object.ts';
import { distanceToCurve } from '../support/walk-oracle.ts';

function eachLayout(seeds: number, look: (layout: Layout, seed: number) => void): void {
  let drawn = 0;
  for (let seed = 0; seed < seeds; seed++) {
    const result = layOut(randomBriefObject(seed));
    if (!result.ok) continue;
    drawn++;
    look(result.layout, seed);
  }
  expect(drawn).toBeGreaterThan(seeds / 2);
}

/** Posts parted at those that a backstop has set; each such post ends one stretch and begins the next. */
function stretches(posts: readonly number[], set: readonly number[]): number[][] {
  const out: number[][] = [[]];
  for (const u of posts) {
    out.at(-1)!.push(u);
    if (u !== posts[0] && u !== posts.at(-1) && set.includes(u)) out.push([u]);
  }
  return out;
}

describe('bays', () => {
  it('are equal on the post line between posts with a place of their own, no longer than the spacing, and as few as that allows', () => {
    eachLayout(150, (layout) => {
      for (const { spans, section: { k }, brief, ...line } of layout.fences) {
        const set = layout.openings.flatMap((one) => ((one.kind === 'backstop' || one.kind === 'alley-gate') && one.run === line.run ? [one.sides[line.side].u as number] : []));
        for (const posts of spans.flatMap((span) => stretches(span.posts, set))) {
          const bays = posts.slice(1).map((u, i) => lengthAtOffset(line, posts[i]!, u, k));
          const whole = bays.reduce((sum, bay) => sum + bay, 0);
          for (const bay of bays) expect(bay).toBeCloseTo(whole / bays.length, 6);
          expect(bays[0]!).toBeLessThanOrEqual(brief.postSpacing + 1e-6);
          if (bays.length > 1) expect(whole / (bays.length - 1)).toBeGreaterThan(brief.postSpacing - 1e-6);
        }
      }
    });
  });

  it('of a run that the spacing divides exactly are not one too many', () => {
    const layout = laidOut(makeBrief({ chute: { width: inches(28), runs: [straight(120), straight(288)] } }));
    expect(fenceOf(layout, 'chute-2', 'left').spans[0]!.posts).toEqual([0, 96, 192, 288]);
  });

  it('fill a run from end to end but at the pivot post and at the mouth', () => {
    eachLayout(100, (layout) => {
      for (const { spans, length } of layout.fences) {
        const [first, last] = [spans[0]!, spans.at(-1)!];
        if (first.start.kind === 'free' || first.start.kind === 'joint') expect(first.posts[0]).toBe(0);
        if (last.end.kind === 'free' || last.end.kind === 'joint') expect(last.posts.at(-1)).toBe(length);
      }
    });
  });
});

describe('posts', () => {
  it('stand off their face by k, measured point by point', () => {
    eachLayout(20, (layout) => {
      for (const post of layout.posts.filter((p) => p.kind !== 'pivot-post')) {
        const own = fenceOf(layout, post.run, post.side);
        // A gate's hinge post may be thicker: its cattle side is in line with the others.
        expect(distanceToCurve(own.face, post.at) - post.section.across / 2).toBeCloseTo(own.section.k - own.section.D / 2, 5);
      }
    });
  });

  it('stand outward of their face: on the left of a left fence\'s walk, on the right of a right one\'s', () => {
    const { posts, fences: all } = laidOut(makeBrief());
    const left = posts.find((p) => p.run === 'chute-1' && p.side === 'left' && p.bay === 2)!;
    const right = posts.find((p) => p.run === 'chute-1' && p.side === 'right' && p.bay === 2)!;
    expect(left.at.x).toBeCloseTo(144 - 28 - 3.9171, 9);
    expect(right.at.x).toBeCloseTo(144 + 3.9171, 9);
    expect(all.every((f) => f.outward === (f.side === 'left' ? 1 : -1))).toBe(true);
  });

  it('serve both runs where two join: listed once, downstream, naming what they also end', () => {
    eachLayout(100, (layout) => {
      const keys = layout.posts.map((p) => `${p.run}/${p.side}/${String(p.bay)}`);
      expect(new Set(keys).size).toBe(keys.length);
      const ended = layout.posts.filter((p) => p.alsoEnds !== null);
      for (const post of ended) {
        const upstream: Fence = fenceOf(layout, post.alsoEnds!.run, post.alsoEnds!.side);
        expect(post.bay).toBe(1);
        // A gap between two spans is a bay of its own.
        expect(post.alsoEnds!.bay).toBe(upstream.spans.reduce((sum, span) => sum + span.posts.length, 0));
        expect(post.alsoEnds!.u).toBe(upstream.spans.at(-1)!.posts.at(-1));
      }
      // Every post of every fence is there: its own, or under the fence that follows.
      const stations = layout.fences.reduce((sum, f) => sum + f.spans.flatMap((span) => span.posts).length, 0);
      expect(layout.posts.length).toBe(stations - ended.length + 1);
    });
  });

  it('are as long as their fence is high and their footing deep, a shared one for the higher fence', () => {
    const high = fence('fences.chute.right', { height: inches(72), solidTo: inches(0) });
    const low = fence('fences.crowdPen');
    const all = { ...fences(), chute: { left: low, right: low }, junction: { left: low, right: high } };
    const { posts } = laidOut(makeBrief({ fences: all, footings: { diameter: inches(12), depth: inches(40) } }));
    const at = (run: string, side: string, bay: number): number => posts.find((p) => p.run === run && p.side === side && p.bay === bay)!.length;
    expect(at('crowd-pen', 'right', 2)).toBe(100);
    expect(at('junction', 'right', 1)).toBe(112);
    expect(at('chute-1', 'right', 1)).toBe(112);
    expect(at('chute-1', 'right', 2)).toBe(100);
  });

  it('of another size downstream stand on the downstream line, and the offset is told where it is over 1/4 in', () => {
    const thick = fence('fences.chute', { post: section('pipe 3 sch 40') });
    const brief = makeBrief({ fences: { ...fences(), chute: { left: thick, right: thick } } });
    const layout = laidOut(brief);
    const post = layout.posts.find((p) => p.run === 'chute-1' && p.side === 'right' && p.bay === 1)!;
    expect(post.section.name).toBe('pipe 3 sch 40');
    expect(post.at.x).toBeCloseTo(144 + 0.1046 + 2.375 + 1.75, 9);
    // (3.5 - 2.875) / 2 = 0.3125; it is told at the outer join, not at the corner, whose post stands on both lines.
    expect(layout.fouls).toEqual([expect.objectContaining({ kind: 'post-line-offset', measured: expect.closeTo(0.3125, 9) as number, runs: ['junction', 'chute-1'] })]);
  });

  it('begin with the pivot post at the origin among the crowd pen\'s, on its pivot side, as long as set', () => {
    for (const [hand, length] of [['left', null], ['right', 130]] as const) {
      const { posts } = laidOut(makeBrief({ crowdPen: { hand, pivotLength: length === null ? null : inches(length) } }));
      const pivots = posts.filter((p) => p.kind === 'pivot-post');
      expect(pivots).toHaveLength(1);
      expect(pivots[0]).toMatchObject({ run: 'crowd-pen', side: hand, bay: 1, at: { x: 0, y: 0 }, length: length ?? 96, alsoEnds: null });
    }
  });

  it('are one corner post at the mouth and plain posts elsewhere', () => {
    const { posts } = laidOut(makeBrief({ chute: { width: inches(28), runs: [arc(192, 60, 'left'), straight(60)] } }));
    expect(posts.filter((p) => p.kind === 'corner-post').map((p) => [p.run, p.side, p.bay, p.alsoEnds?.run])).toEqual([['chute-1', 'left', 1, 'junction']]);
  });
});
