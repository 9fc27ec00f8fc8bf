import { describe, expect, it } from 'vitest';
import { planPoint, type Vec } from '../../core/base/points.ts';
import { degrees, inches } from '../../core/base/quantity.ts';
import { otherSide, type Brief } from '../../core/brief/types.ts';
import { fenceFouls } from '../../core/layout/fouls/fence-fouls.ts';
import { foulList } from '../../core/layout/fouls/foul-list.ts';
import { postFouls } from '../../core/layout/fouls/post-fouls.ts';
import { facePoint, layOut, type Fence, type Foul, type Layout, type Post } from '../../core/layout/index.ts';
import { arc, fence, fences, makeBrief, section, straight } from '../support/brief-builder.ts';
import { fenceOf, laidOut } from '../support/laid-out.ts';
import { randomBriefObject } from '../support/random-brief-object.ts';
import { seeded } from '../support/random.ts';

const chute = (...runs: Brief['chute']['runs']): Pick<Brief, 'chute'> => ({ chute: { width: inches(28), runs } });
const kinds = (fouls: readonly Foul[]): readonly string[] => fouls.map((f) => `${f.kind} ${f.runs.join('+')}`);

describe('fouls', () => {
  it('are none in sound facilities: every hand, lapped and coped, straight and curved from the mouth', () => {
    for (const hand of ['left', 'right'] as const) {
      for (const construction of ['lapped', 'coped'] as const) {
        for (const funnelAngle of [25, 30, 40, 60, 90]) {
          for (const runs of [[straight(120), arc(192, 90, 'right'), straight(72)], [arc(150, 60, otherSide(hand)), straight(100)], [straight(12)]]) {
            const brief = makeBrief({ ...chute(...runs), crowdPen: { hand, funnelAngle: degrees(funnelAngle) }, fences: fences({ construction }) });
            expect(laidOut(brief).fouls).toEqual([]);
          }
        }
      }
    }
  });

  it('tell a chute that comes back over itself, with the place', () => {
    const layout = laidOut(makeBrief(chute(straight(200), arc(80, 270, 'right'), straight(300))));
    const crossed = layout.fouls.filter((f) => f.runs.join('+') === 'chute-1+chute-3');
    expect(crossed.map((f) => f.kind).sort()).toEqual(['foul-fence', 'foul-path']);
    const path = crossed.find((f) => f.kind === 'foul-path')!;
    // Up at x 130, 270° round a center at (224, m + 200), then straight in -x at the center's height less 94.
    expect(path.at.x).toBeCloseTo(130, 6);
    expect(path.at.y).toBeCloseTo(layout.mouthDistance + 200 - 94, 6);
    // The two middles cross once; each middle crosses the other's two faces.
    expect(path.measured).toBe(5);
    expect(crossed.find((f) => f.kind === 'foul-fence')!.measured).toBe(4);
  });

  it('tell an arc that goes on round onto itself', () => {
    const layout = laidOut(makeBrief(chute(straight(60), arc(100, 270, 'right'), arc(100, 150, 'right'))));
    expect(kinds(layout.fouls)).toContain('foul-path chute-2+chute-3');
    expect(kinds(layout.fouls)).toContain('foul-fence chute-2+chute-3');
  });

  it('tell a chute that runs back through the alley and the pen', () => {
    const layout = laidOut(makeBrief(chute(straight(40), arc(60, 180, 'left'), straight(700))));
    expect(kinds(layout.fouls)).toEqual(expect.arrayContaining(['foul-path crowd-pen+chute-3', 'foul-fence crowd-pen+chute-3']));
  });

  it('tell two fences back to back that stand in one another though their faces are apart', () => {
    // Each is 0.1046 + 2.375 + 2.875 = 5.3546 in thick, the two of them 10.7092.
    const model = fenceOf(laidOut(makeBrief()), 'alley-1', 'left');
    const beside = (run: string, y: number, from: number, to: number): Fence =>
      ({ ...model, run, face: { kind: 'line', a: planPoint(from, y), b: planPoint(to, y) } });
    const told = (gap: number): readonly Foul[] => {
      const list = foulList();
      fenceFouls([beside('alley-1', 0, 0, 240), beside('chute-1', gap, 300, 60)], [], list);
      return list.list();
    };
    expect(told(10.75)).toEqual([]);
    expect(told(10.6)).toEqual([expect.objectContaining({ kind: 'foul-fence', runs: ['alley-1', 'chute-1'], measured: 1 })]);
  });

  it('agree with fine polylines of faces and backs on which fences that do not join cross', () => {
    let crossed = 0;
    for (let seed = 0; seed < 120; seed++) {
      const result = layOut(randomBriefObject(seed));
      if (!result.ok) continue;
      const { fouls } = result.layout;
      const expected = polylineFouls(result.layout);
      crossed += expected.size;
      const told = new Set(fouls.filter((f) => f.kind === 'foul-fence').map((f) => f.runs.join('+')));
      for (const pair of expected) expect([seed, told.has(pair), pair]).toEqual([seed, true, pair]);
      const joined = joins(result.layout);
      for (const pair of told) if (!joined.has(pair)) expect([seed, expected.has(pair), pair]).toEqual([seed, true, pair]);
    }
    expect(crossed).toBeGreaterThan(50);
  });

  it('tell where fences of different build are offset on their shared post, over 1/4 in only', () => {
    const other = (construction: 'lapped' | 'coped', post: string): readonly Foul[] => {
      const built = fence('fences.alley', { construction, post: section(post) });
      return laidOut(makeBrief({ fences: { ...fences(), alley: { left: built, right: built } } })).fouls;
    };
    expect(other('lapped', 'pipe 2 1/2 sch 40')).toEqual([]);
    expect(other('coped', 'pipe 2 1/2 sch 40')).toEqual([expect.objectContaining({ kind: 'post-line-offset', measured: expect.closeTo(2.375, 9) as number })]);
    expect(other('lapped', 'pipe 3 sch 40')).toEqual([expect.objectContaining({ measured: expect.closeTo(0.3125, 9) as number })]);
  });
});

describe('posts too near', () => {
  const postAt = (x: number, y: number, size: string): Post => ({
    kind: 'post', at: planPoint(x, y), section: section(size), length: inches(96), fenceHeight: inches(60), run: 'chute-1', side: 'left', bay: 1,
    u: inches(0), hole: { diameter: inches(12), depth: inches(36) }, alsoEnds: null,
  });

  it('are told from half their sizes and 1/2 in down, by how much', () => {
    // (2.875 + 4.5) / 2 + 0.5 = 4.1875
    expect(postFouls([postAt(0, 0, 'pipe 2 1/2 sch 40'), postAt(4.1875, 0, 'pipe 4 sch 40')])).toEqual([]);
    expect(postFouls([postAt(0, 0, 'pipe 2 1/2 sch 40'), postAt(0, -4.0625, 'pipe 4 sch 40')])).toEqual([
      expect.objectContaining({ kind: 'foul-post', measured: expect.closeTo(0.125, 9) as number, at: { x: 0, y: -2.03125 } }),
    ]);
  });

  it('are the same pairs as trying every pair', () => {
    const random = seeded(3);
    const posts = Array.from({ length: 400 }, () => postAt(random.between(-100, 100), random.between(-100, 100), random.pick(['pipe 2 sch 40', 'pipe 5 sch 40'])));
    let pairs = 0;
    posts.forEach((a, i) => posts.slice(i + 1).forEach((b) => {
      const least = (a.section.across + b.section.across) / 2 + 0.5;
      if (Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y) < least - 1e-6) pairs++;
    }));
    expect(pairs).toBeGreaterThan(20);
    expect(postFouls(posts)).toHaveLength(pairs);
  });

  it('are told in a layout: a junction\'s outer side of a few inches', () => {
    const layout = laidOut(makeBrief({ crowdPen: { funnelAngle: degrees(89) } }));
    // m = 116 / tan 89° = 2.0248; the two posts want 3.375.
    expect(layout.fouls).toEqual([expect.objectContaining({ kind: 'foul-post', measured: expect.closeTo(3.375 - 2.0248, 3) as number, runs: ['junction', 'chute-1'] })]);
  });
});

/** Runs whose fences share a post, and those that only a pad's shoulder parts. */
function joins(layout: Layout): Set<string> {
  const shared = layout.posts.flatMap((p) => (p.alsoEnds === null ? [] : [[p.alsoEnds.run, p.run] as const]));
  const across = shared.filter(([, next]) => next.endsWith('shoulder')).flatMap(([first, next]) => shared.filter(([one]) => one === next).map(([, last]) => [first, last] as const));
  return new Set([...shared, ...across].map((pair) => pair.join('+')));
}

/** Pairs of runs of which a fence's face or back crosses another's, by the corners of polylines alone; joined fences left out. */
function polylineFouls(layout: Layout): Set<string> {
  const lines = layout.fences.map((f) => {
    const [from, to] = [f.spans[0]!.posts[0]!, f.spans.at(-1)!.posts.at(-1)!];
    const steps = f.faceRadius === null ? 1 : Math.max(8, Math.ceil((to - from) / f.faceRadius / 0.01));
    const at = (offset: number): readonly Vec[] => Array.from({ length: steps + 1 }, (_, i) => facePoint(f, from + ((to - from) * i) / steps, offset));
    return { fence: f, lines: [at(0), at(f.section.k + f.section.D / 2)] };
  });
  const found = new Set<string>();
  lines.forEach((a, i) => lines.slice(i + 1).forEach((b) => {
    const joined = layout.posts.some((p) => p.run === b.fence.run && p.side === b.fence.side && p.alsoEnds?.run === a.fence.run && p.alsoEnds.side === a.fence.side);
    if (!joined && a.lines.some((p) => b.lines.some((q) => polylinesCross(p, q)))) found.add(`${a.fence.run}+${b.fence.run}`);
  }));
  return found;
}

function polylinesCross(p: readonly Vec[], q: readonly Vec[]): boolean {
  const side = (a: Vec, b: Vec, c: Vec): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  for (let i = 0; i + 1 < p.length; i++) {
    for (let j = 0; j + 1 < q.length; j++) {
      const [a, b, c, d] = [p[i]!, p[i + 1]!, q[j]!, q[j + 1]!];
      if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) return true;
    }
  }
  return false;
}
