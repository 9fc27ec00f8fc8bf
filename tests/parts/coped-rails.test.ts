import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { printFault } from '../../core/brief/print-fault.ts';
import { layOut, lengthAtOffset } from '../../core/layout/index.ts';
import { makeParts, type Piece } from '../../core/parts/index.ts';
import { fence, fences, makeBrief, section, straight, type BriefParts } from '../support/brief-builder.ts';
import { fenceOf, laidOut, partsOf } from '../support/laid-out.ts';

const coped = fences({ construction: 'coped' });
const rails = (parts: BriefParts, run: string, side: string): readonly Piece[] =>
  partsOf(makeBrief(parts)).pieces.filter((piece) => piece.kind === 'rail' && piece.run === run && piece.side === side);

function faultsOf(parts: BriefParts): readonly string[] {
  const brief = makeBrief(parts);
  const layout = layOut(brief);
  const made = layout.ok ? makeParts(brief, layout.layout) : layout;
  return made.ok ? [] : made.faults.map(printFault);
}

describe('coped rails', () => {
  it('of a straight bay are L - 2·0.8101 long and L - 2.875 short (geometry contract), weighed at the mean', () => {
    const [piece] = rails({ fences: coped }, 'chute-3', 'left');
    expect(piece?.length).toBeCloseTo(72 - 2 * 0.81009, 4);
    expect(piece?.lengthShort).toBe(72 - 2.875);
    expect(piece?.weight).toBeCloseTo(((piece!.length + piece!.lengthShort!) / 2) * section('pipe 2 sch 40').weightPerInch, 8);
    expect(piece?.ends).toEqual([{ kind: 'cope', postRadius: 1.4375 }, { kind: 'cope', postRadius: 1.4375 }]);
    expect(rails({ fences: coped }, 'alley-1', 'right').every((rail) => rail.bays === 1)).toBe(true);
  });

  it('of an arc end where the axis comes that near to the post\'s center, found by walking the axis', () => {
    const layout = laidOut(makeBrief({ fences: coped }));
    const pen = fenceOf(layout, 'crowd-pen', 'right');
    const radius = 144 + pen.section.kr;
    const angle = Math.PI / (pen.spans[0]!.posts.length - 1);
    /** Axis left between two circles of radius q about the post centers, by bisection on the straight distance. */
    const between = (q: number): number => {
      let [low, high] = [0, angle / 2];
      for (let i = 0; i < 100; i++) {
        const at = (low + high) / 2;
        if (Math.hypot(radius * Math.cos(at) - radius, radius * Math.sin(at)) < q) low = at;
        else high = at;
      }
      return radius * (angle - 2 * low);
    };
    const [piece] = rails({ fences: coped }, 'crowd-pen', 'right');
    expect(piece?.length).toBeCloseTo(between(Math.sqrt(1.4375 ** 2 - 1.1875 ** 2)), 8);
    expect(piece?.lengthShort).toBeCloseTo(between(1.4375), 8);
    expect(piece?.bend?.radius).toBeCloseTo(radius, 9);
    expect(lengthAtOffset(pen, 0, pen.length, pen.section.kr)).toBeCloseTo(Math.PI * radius, 9);
  });

  it('fit the post that stands at each end, also where it is the next run\'s', () => {
    const thick = fence('fences.chute', { construction: 'coped', post: section('pipe 4 sch 40') });
    const parts = { fences: { ...coped, chute: { left: thick, right: thick } } };
    const last = rails(parts, 'junction', 'right').at(-1)!;
    expect(last.ends).toEqual([{ kind: 'cope', postRadius: 1.4375 }, { kind: 'cope', postRadius: 2.25 }]);
    const funnel = rails(parts, 'junction', 'left').at(-1)!;
    expect(funnel.ends[1]).toEqual({ kind: 'cope', postRadius: 2.25 });
    const bay = rails(parts, 'junction', 'right')[0]!;
    // The same bay but for the end post: the long point moves from sqrt(p² - r²) of one post to that of the other.
    expect(bay.length - last.length).toBeCloseTo(Math.sqrt(2.25 ** 2 - 1.1875 ** 2) - Math.sqrt(1.4375 ** 2 - 1.1875 ** 2), 8);
  });

  it('end square on the flat of a rectangular post', () => {
    const lapped = fence('fences.chute', { post: section('tube 3 x 4 x 1/4') });
    const last = rails({ fences: { ...coped, chute: { left: lapped, right: lapped } } }, 'junction', 'right').at(-1)!;
    expect(last.ends[1]).toEqual({ kind: 'square' });
  });

  it('are a fault where the post they share is no thicker than they are', () => {
    const thin = fence('fences.chute', { post: section('pipe 2 sch 40') });
    const found = faultsOf({ fences: { ...coped, chute: { left: thin, right: thin } } });
    expect(found).toEqual(['fences.crowdPen.rail: a coped rail of pipe 2 sch 40 on the left side of junction meets a post of pipe 2 sch 40 that it shares with another fence, must be thinner than that post']);
  });

  it('are a fault where a bay is longer than the stock or leaves nothing between two posts', () => {
    // Bays of 80 in, less twice 0.8101.
    const alley = { runs: [straight(240), straight(240)] };
    expect(faultsOf({ alley, fences: coped, shop: { stock: { 'pipe 2 sch 40': [inches(78)] } } })).toEqual([
      'fences.crowdPen.postSpacing: a bay of the left fence of alley-1 needs 78 3/8" of pipe 2 sch 40 for a rail, must be within its longest stock of 78"',
    ]);
    const big = fences({ construction: 'coped', post: section('pipe 5 sch 40') });
    const found = faultsOf({ fences: big, chute: { width: inches(28), runs: [straight(100), { kind: 'arc', insideRadius: inches(60), angle: (5 * Math.PI / 180) as never, hand: 'left' }] } });
    expect(found[0]).toMatch(/^chute\.runs\[1\]\.angle: the left fence of chute-2 leaves 5" between two posts, too short for a rail/);
  });
});
