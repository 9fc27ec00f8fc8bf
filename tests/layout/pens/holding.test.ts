import { describe, expect, it } from 'vitest';
import { distance } from '../../../core/base/points.ts';
import { inches } from '../../../core/base/quantity.ts';
import { readBrief, type HoldingPenBrief } from '../../../core/brief/index.ts';
import { layOut, type Layout } from '../../../core/layout/index.ts';
import { fences, makeBrief } from '../../support/brief-builder.ts';
import { changed, leastProject } from '../../support/change-project.ts';
import { fenceOf, laidOut, runOf } from '../../support/laid-out.ts';
import { mirrorBrief, randomFence } from '../../support/random-brief-object.ts';
import { holdingPen, randomHolding } from '../../support/random-holding.ts';
import { seeded } from '../../support/random.ts';

/** Sheet 12 ga, pipe 2 rails, pipe 2 1/2 posts, lapped: from the face to the posts' backs. */
const THICK = 0.1046 + 2.375 + 2.875;
const withPens = (...holdingPens: readonly HoldingPenBrief[]): Layout => laidOut(makeBrief({ holdingPens }));
const sizesOf = (pen: object, ...more: readonly (readonly [string, unknown])[]): readonly number[] => {
  const read = readBrief(changed(leastProject(), ['holdingPens', [pen]], ...more));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const [first] = read.brief.holdingPens;
  return [first!.length, first!.width];
};

describe('the size of a holding pen (area a head: Univ. of Arkansas Extension, companion to MP239)', () => {
  it('is square by its head at 20 ft2 for mature cattle, each side up to the next inch', () => {
    // 60 x 20 ft2 = 172,800 in2; its root is 415.69; 172,800 / 416 = 415.4.
    expect(sizesOf({ head: 60 })).toEqual([416, 416]);
    // 17 ft2: 146,880 in2, root 383.2, 146,880 / 384 = 382.5.
    expect(sizesOf({ head: 60 }, ['cattle.kind', 'yearling'])).toEqual([384, 383]);
    expect(sizesOf({ head: 60 }, ['cattle.kind', 'calf'])[0]).toBe(348);
  });

  it('follows from the one side that is given, and is as given where both are', () => {
    expect(sizesOf({ head: 60, width: '30 ft' })).toEqual([480, 360]);
    expect(sizesOf({ head: 60, length: '50 ft' })).toEqual([600, 288]);
    expect(sizesOf({ head: 60, length: 300, width: 200 })).toEqual([300, 200]);
  });

  it('has room for its gate, however few it is for', () => {
    expect(sizesOf({ head: 1, gate: '12 ft' })).toEqual([192, 96]);
  });

  it('in millimeters goes up to the next 10', () => {
    for (const side of sizesOf({ head: 60 }, ['units', 'mm'])) expect((side * 25.4) / 10).toBeCloseTo(Math.round((side * 25.4) / 10), 9);
  });
});

describe('the place of the holding pens', () => {
  it('is beside a drive alley upstream of the alley, on the side away from the chute, worked by hand', () => {
    const layout = withPens(holdingPen(), holdingPen({ name: 'hold-2', length: inches(240), width: inches(300), gate: inches(120), path: 'holdingPens[1]' }));
    // The alley ends at (-72, 0), comes down from (-72, 240) and is 144 wide: the pens lie beyond x = -144.
    const [start, end, far, back] = layout.holdingPens[1]!.corners;
    expect([end.x, end.y]).toEqual([expect.closeTo(-144 - THICK, 9), expect.closeTo(240 + THICK, 9)]);
    expect([start.x, start.y]).toEqual([expect.closeTo(-144 - THICK, 9), expect.closeTo(240 + THICK + 240, 9)]);
    expect([far.x, back.y]).toEqual([expect.closeTo(-144 - THICK - 300, 9), start.y]);
    // One fence between the two pens: the first pen ends where that fence's face is.
    expect(layout.holdingPens[0]!.corners[1].y).toBeCloseTo(start.y + THICK, 9);
    expect(runOf(layout, 'hold-1').length).toBeCloseTo(480 + 2 * THICK, 9);
    expect(runOf(layout, 'hold-2').length).toBeCloseTo(240 + THICK, 9);
    expect(layout.runs.map(({ name }) => name).slice(0, 7)).toEqual(['hold-1', 'hold-1-start', 'hold-1-back', 'hold-1-end', 'hold-2', 'hold-2-back', 'hold-2-end']);
    expect(layout.fouls).toEqual([]);
  });

  it('leaves the clear ground that was asked for between the faces and the posts\' backs round it', () => {
    const layout = withPens(holdingPen());
    const end = fenceOf(layout, 'hold-1-end', 'left');
    const start = fenceOf(layout, 'hold-1-start', 'right');
    const back = fenceOf(layout, 'hold-1-back', 'right');
    const y = (fence: typeof end): number => (fence.face.kind === 'line' ? fence.face.a.y : NaN);
    expect(y(start) - y(end)).toBeCloseTo(480, 9);
    expect(back.face.kind === 'line' ? -144 - THICK - back.face.a.x : NaN).toBeCloseTo(360, 9);
    // Posts stand outside.
    for (const post of layout.posts.filter(({ run }) => run === 'hold-1-end')) expect(post.at.y).toBeCloseTo(y(end) - 3.9171, 3);
    for (const post of layout.posts.filter(({ run }) => run === 'hold-1-start')) expect(post.at.y).toBeCloseTo(y(start) + 3.9171, 3);
  });

  it('has a gate of its own onto the drive alley, 2 ft from its downstream end', () => {
    const layout = withPens(holdingPen());
    const [gate] = layout.openings;
    expect(gate).toMatchObject({ kind: 'pen-gate', run: 'hold-1', side: 'right', width: 144, path: 'holdingPens[0]' });
    expect(gate!.at.y - layout.holdingPens[0]!.corners[1].y).toBeCloseTo(24 + 72, 9);
    // On the usual post for a closed leaf of its width, its cattle side in line with the others.
    const hinge = layout.posts.find(({ kind, section }) => kind === 'jamb-post' && section.name === 'pipe 5 sch 40')!;
    expect(Math.abs(hinge.at.x + 144)).toBeCloseTo(0.1046 + 2.375 + 5.563 / 2, 9);
    expect(hinge.at.y - gate!.at.y).toBeCloseTo(72 + 5.563 / 2, 9);
  });

  it('shares posts with the alley where the drive alley joins it', () => {
    const layout = withPens(holdingPen());
    const joint = layout.posts.filter(({ run, u }) => run === 'alley-1' && u === 0);
    expect(joint.map(({ alsoEnds }) => alsoEnds?.run)).toEqual(['hold-1', 'hold-1']);
  });

  it('a gate as long as its pen is a foul and is left out', () => {
    const layout = withPens(holdingPen({ length: inches(140) }));
    expect(layout.fouls.map(({ kind, openings }) => [kind, openings?.path])).toEqual([['foul-opening', 'holdingPens[0]']]);
    expect(layout.openings).toEqual([]);
  });
});

describe('holding pens of any size in any fence', () => {
  it('stand clear of one another and of the alley, mirrored in a mirrored facility', () => {
    let laid = 0;
    for (let seed = 0; seed < 120; seed++) {
      const random = seeded(seed);
      const own = randomFence(random, 'fences.pens');
      const brief = makeBrief({ fences: { ...fences(), pens: { left: own, right: own } }, holdingPens: randomHolding(random) });
      const result = layOut(brief);
      const mirrored = layOut(mirrorBrief(brief));
      expect(mirrored.ok).toBe(result.ok);
      if (!result.ok || !mirrored.ok) continue;
      laid++;
      const told = result.layout.fouls.filter(({ kind }) => kind === 'foul-fence' || kind === 'foul-path' || kind === 'foul-post');
      expect(told, String(seed)).toEqual([]);
      expect(mirrored.layout.fouls.length).toBe(result.layout.fouls.length);
      expect(mirrored.layout.posts.length).toBe(result.layout.posts.length);
      for (const { brief: pen, corners: [a, b, c, d] } of result.layout.holdingPens) {
        for (const [side, length] of [[distance(a, b), pen.length], [distance(c, d), pen.length], [distance(b, c), pen.width]] as const) expect(side).toBeCloseTo(length, 6);
      }
    }
    expect(laid).toBeGreaterThan(96);
  });
});
