import { describe, expect, it } from 'vitest';
import { inches } from '../../../core/base/quantity.ts';
import { type Brief, type RoofBrief } from '../../../core/brief/types.ts';
import { facePoint, type Layout } from '../../../core/layout/index.ts';
import { makeBrief, straight, arc } from '../../support/brief-builder.ts';
import { fenceOf, laidOut, partsOf, runOf } from '../../support/laid-out.ts';

const pad = (length: number, width: number, roof: RoofBrief | null = null): Brief['squeezePad'] => ({ length: inches(length), width: inches(width), roof });
// A straight chute up the plan: x 130 is its centerline (radius 144 less half of 28), its end at the mouth's 200.9179 and 120.
const upright = (squeezePad: Brief['squeezePad']): Brief => makeBrief({ chute: { width: inches(28), runs: [straight(120)] }, squeezePad });
const MOUTH = (144 - 28) / Math.tan(Math.PI / 6);
const END = MOUTH + 120;

const points = (layout: Layout, run: string, side: 'left' | 'right'): readonly [number, number][] =>
  layout.posts.filter((post) => post.run === run && post.side === side).map(({ at }) => [at.x, at.y]);

describe('a squeeze pad', () => {
  it('goes on along the chute\'s centerline at its own clear width, off the chute\'s stations', () => {
    const layout = laidOut(upright(pad(150, 130)));
    const { path, faces, from, length, width } = runOf(layout, 'squeeze-pad');
    expect([from, length, width]).toEqual([null, 150, 130]);
    expect(path).toMatchObject({ a: { x: expect.closeTo(130, 9) as number, y: expect.closeTo(END, 9) as number }, b: { x: expect.closeTo(130, 9) as number, y: expect.closeTo(END + 150, 9) as number } });
    expect(faces.left).toMatchObject({ a: { x: expect.closeTo(65, 9) as number }, b: { x: expect.closeTo(65, 9) as number } });
    expect(faces.right).toMatchObject({ a: { x: expect.closeTo(195, 9) as number }, b: { x: expect.closeTo(195, 9) as number } });
    expect(layout.fouls).toEqual([]);
  });

  it('is joined to the chute by square shoulders, one post at each corner, k off both faces', () => {
    const layout = laidOut(upright(pad(150, 130)));
    // k = 0.1046 + 2.375 + 2.875 / 2.
    const k = 3.9171;
    const [first] = points(layout, 'pad-shoulder', 'left');
    expect(first).toEqual([expect.closeTo(116 - k, 4), expect.closeTo(END - k, 4)]);
    const [corner] = points(layout, 'squeeze-pad', 'left');
    expect(corner).toEqual([expect.closeTo(65 - k, 4), expect.closeTo(END - k, 4)]);
    const shared = layout.posts.find((post) => post.run === 'pad-shoulder' && post.side === 'left' && post.bay === 1);
    expect(shared?.alsoEnds).toMatchObject({ run: 'chute-1', side: 'left' });
  });

  it('has lapped rails mitred at 45° round its corners, and skins that meet there', () => {
    const rails = partsOf(upright(pad(150, 130))).pieces.filter((piece) => piece.kind === 'rail' && piece.run === 'pad-shoulder' && piece.side === 'left');
    expect(rails.length).toBe(5);
    for (const { ends, length } of rails) {
      // Its axis runs from one mitre to the other: as long as the shoulder, (130 - 28) / 2, less half a gap at each end.
      expect(length).toBeCloseTo(51 - 0.125, 6);
      // Out from the chute and back to the pad: the long points lie on opposite sides.
      expect(ends).toEqual([1, -1].map((way) => ({ kind: 'mitre', angle: expect.closeTo((way * Math.PI) / 4, 9) as number })));
    }
  });

  it('stands clear or not by its own width: a shoulder as long as a post and 1/2 in just does', () => {
    const fouls = (width: number) => laidOut(upright(pad(150, width))).fouls.map(({ kind }) => kind);
    expect(fouls(28 + 2 * 3.375)).toEqual([]);
    expect(fouls(28 + 2 * 3.36)).toEqual(['foul-post', 'foul-post']);
  });

  it('follows an arc as well: its shoulder\'s face is radial, its corner post on both post lines', () => {
    const layout = laidOut(makeBrief({ chute: { width: inches(28), runs: [straight(120), arc(192, 90, 'right')] }, squeezePad: pad(144, 120) }));
    expect(layout.fouls).toEqual([]);
    const chute = fenceOf(layout, 'chute-2', 'right');
    const shoulder = fenceOf(layout, 'pad-shoulder', 'right');
    const [a, b] = [facePoint(chute, chute.spans.at(-1)!.posts.at(-1)!, chute.section.k), facePoint(shoulder, shoulder.spans[0]!.posts[0]!, shoulder.section.k)];
    expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(1e-9);
  });

  it('turned back into the crowd pen is a foul of path and of fence', () => {
    const brief = makeBrief({ chute: { width: inches(28), runs: [straight(40), arc(60, 180, 'left'), straight(100)] }, squeezePad: pad(600, 60) });
    const told = laidOut(brief).fouls.filter(({ runs }) => runs.includes('squeeze-pad')).map(({ kind, runs }) => `${kind} ${runs.join(' ')}`);
    expect(told).toEqual(expect.arrayContaining(['foul-path crowd-pen squeeze-pad', 'foul-fence crowd-pen squeeze-pad']));
  });

  it('has a roof over its middle, as long along the walk and as wide as the brief says', () => {
    const { roof } = laidOut(upright(pad(150, 130, { length: inches(200), width: inches(90), open: ['in'], daylight: 0 })));
    const [xs, ys] = [roof.map(({ x }) => x), roof.map(({ y }) => y)];
    expect([Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)].map((value) => Math.round(value * 1e6) / 1e6))
      .toEqual([85, 175, END - 25, END + 175].map((value) => Math.round(value * 1e6) / 1e6));
    expect(laidOut(upright(null)).roof).toEqual([]);
  });
});
