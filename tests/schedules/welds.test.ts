/** The weld list: sizes against the table that the rule names, lengths and volumes against sums of their own, counts against the geometry of the fences. */
import { describe, expect, it, test } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { layOut, type Layout } from '../../core/layout/index.ts';
import { makeParts, type Parts } from '../../core/parts/index.ts';
import { filletSize, saddleLength, weldColumns, weldMaterialRows, weldRows } from '../../core/schedules/index.ts';
import { crossedRounds, ellipseLength, flareArea, stitchedLength } from '../../core/schedules/welds/deposit.ts';
import { fences, makeBrief } from '../support/brief-builder.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';
import { randomBriefObject } from '../support/random-brief-object.ts';

const WELDS = makeBrief().shop.welds;

describe('size of a fillet', () => {
  // AISC 360 Table J2.4, least size by the thinner part (from memory): to 1/4, 1/2, 3/4 in, and over.
  test.each([
    [0.216, 1 / 8], [0.25, 1 / 8], [0.2501, 3 / 16], [0.5, 3 / 16], [0.51, 1 / 4], [0.75, 1 / 4], [0.76, 5 / 16], [2, 5 / 16],
  ])('thinner part %f: %f', (thinner, size) => expect(filletSize(WELDS, thinner)).toBe(size));

  // A thinner sheet takes its own thickness, up to the next 1/16: gauges of values.md.
  test.each([[0.0598, 1 / 16], [0.0747, 1 / 8], [0.1046, 1 / 8], [0.1793, 1 / 8]])('sheet of %f: %f', (thinner, size) => expect(filletSize(WELDS, thinner)).toBe(size));

  test('the shop lays no less than it says, but on sheet', () => {
    expect(filletSize({ ...WELDS, fillet: inches(0.1875) }, 0.216)).toBe(0.1875);
    expect(filletSize({ ...WELDS, fillet: inches(0.1875) }, 0.1046)).toBe(0.125);
    expect(filletSize({ ...WELDS, fillet: inches(0.0625) }, 0.216)).toBe(0.125);
    expect(() => filletSize(WELDS, NaN)).toThrow(/thickness/);
  });
});

describe('length and volume', () => {
  test('round an ellipse, against chords of it', () => {
    for (const [a, b] of [[1, 1], [1.2, 0.7], [2, 2 * Math.SQRT2]] as const) {
      let sum = 0;
      for (let i = 0; i < 20_000; i += 1) {
        const [u, v] = [(2 * Math.PI * i) / 20_000, (2 * Math.PI * (i + 1)) / 20_000];
        sum += Math.hypot(a * (Math.cos(v) - Math.cos(u)), b * (Math.sin(v) - Math.sin(u)));
      }
      expect(ellipseLength(a, b)).toBeCloseTo(sum, 4);
    }
  });

  test('round a saddle: a thin branch on a thick post is a circle, two alike are two halves of an ellipse', () => {
    expect(saddleLength(0.01, 40, Math.PI / 2)).toBeCloseTo(2 * Math.PI * 0.01, 5);
    const r = 1.3;
    expect(saddleLength(r * (1 - 1e-9), r, Math.PI / 2)).toBeCloseTo(ellipseLength(r, r * Math.SQRT2), 2);
  });

  test('two rounds that cross: what lies between their surfaces, summed over a grid of the true circles', () => {
    const [p, r, size] = [1.4375, 1.1875, 0.125];
    const step = 0.002;
    let volume = 0;
    for (let x = -0.75; x < 0.75; x += step) {
      for (let z = -0.75; z < 0.75; z += step) {
        const gap = p - Math.sqrt(p ** 2 - x ** 2) + r - Math.sqrt(r ** 2 - z ** 2);
        if (gap <= size) volume += gap * step ** 2;
      }
    }
    const one = crossedRounds(p, r, size);
    // The parabolas that stand for the circles make it more, by the next term of the series: less than size/r.
    expect(one.volume).toBeGreaterThan(volume);
    expect(one.volume / volume - 1).toBeLessThan(size / r);
    expect(one.length).toBeCloseTo(ellipseLength(Math.sqrt(2 * p * size), Math.sqrt(2 * r * size)), 9);
  });

  test('a flare between a flat and a round, summed over the true circle', () => {
    const [r, size] = [1.1875, 0.125];
    let area = 0;
    for (let x = 0; ; x += 0.0005) {
      const gap = r - Math.sqrt(r ** 2 - x ** 2);
      if (gap > size) break;
      area += gap * 0.0005;
    }
    expect(Math.abs(flareArea(r, size) / area - 1)).toBeLessThan(0.002);
  });

  // By hand: 2 in stitches on 12 in centers on 96 in of seam begin at 0, 12, ... 84, the last ends at 86: 8 of them; on 98 in a ninth fits.
  test.each([[96, 16], [98, 18], [13, 2], [14, 4], [1.5, 1.5], [2, 2]])('stitches on a seam of %f: %f', (seam, laid) => expect(stitchedLength(seam, 2, 12)).toBe(laid));
  test('stitches that touch run through', () => expect(stitchedLength(77, 4, 4)).toBe(77));
});

interface Made {
  readonly brief: Brief;
  readonly layout: Layout;
  readonly parts: Parts;
}
const rowsOf = ({ brief, layout, parts }: Made) => weldRows(brief, layout, parts);
const countOf = (made: Made, joint: string): number => rowsOf(made).reduce((sum, { weld, count }) => sum + (weld.joint === joint ? count : 0), 0);
const designOf = (brief: Brief): Made => ({ brief, layout: laidOut(brief), parts: partsOf(brief) });

/** Places where a lapped rail touches a post, by the positions of both along their fence: each post, row and fence once. */
function crossings({ layout, parts }: Made): number {
  const found = new Set<string>();
  for (const fence of layout.fences) {
    if (fence.brief.construction !== 'lapped') continue;
    const rails = parts.pieces.filter((piece) => piece.place.kind === 'rail' && piece.run === fence.run && piece.side === fence.side);
    const stands = layout.posts.flatMap((post) => {
      if (post.run === fence.run && post.side === fence.side && post.kind !== 'pivot-post') return [{ post, u: post.u }];
      return post.alsoEnds?.run === fence.run && post.alsoEnds.side === fence.side ? [{ post, u: post.alsoEnds.u }] : [];
    });
    for (const { post, u } of stands) {
      for (const { place } of rails) {
        if (place.kind !== 'rail' || u < place.from - 4 || u > place.to + 4) continue;
        // In line two fences' rails meet on one post; round a corner each crosses it by itself.
        const fenceToo = post.kind === 'corner-post' ? ` ${fence.run}` : '';
        found.add(`${post.at.x.toFixed(3)} ${post.at.y.toFixed(3)} ${place.height.toFixed(3)}${fenceToo}`);
      }
    }
  }
  return found.size;
}

describe('the weld list', () => {
  it('has every place where a lapped rail crosses a post', () => {
    const made = designOf(makeBrief({ fences: fences({ rails: 4 }) }));
    expect(countOf(made, 'rail-lapped')).toBe(crossings(made));
  });

  it('has both ends of every coped rail, and no other weld of rails', () => {
    const made = designOf(makeBrief({ fences: fences({ construction: 'coped' }) }));
    const rails = made.parts.pieces.filter(({ kind }) => kind === 'rail').length;
    expect(countOf(made, 'rail-coped')).toBe(2 * rails);
    expect(rowsOf(made).filter(({ weld }) => /^rail-(lapped|splice|mitre)$/.test(weld.joint))).toEqual([]);
  });

  it('has a joint for each piece of rail but the first of every row in line', () => {
    const made = designOf(makeBrief());
    const rails = made.parts.pieces.filter(({ place }) => place.kind === 'rail');
    // A row in line begins where nothing ends: where two runs join in line the downstream one goes on.
    const ends = (fence: Layout['fences'][number]): number => fence.spans.filter(({ start }) => start.kind !== 'joint').length * fence.section.rows.length;
    const begun = made.layout.fences.reduce((sum, fence) => sum + ends(fence), 0);
    expect(countOf(made, 'rail-splice')).toBe(rails.length - begun);
    expect(countOf(made, 'rail-mitre')).toBe(5);
  });

  it('says fillet by the sheet for a skin, in the shop\'s stitches; 3/16 and 3 on 9 where it says so', () => {
    const made = designOf(makeBrief({ shop: { welds: { fillet: inches(0.1875), skinLength: inches(3), skinPitch: inches(9), efficiency: 0.8 } } }));
    const skin = rowsOf(made).find(({ weld }) => weld.joint === 'skin-rail')!;
    expect(skin.weld.symbol.arrow).toEqual({ kind: 'flare-bevel', size: 0.125, length: 3, pitch: 9 });
    expect(skin.filler * 0.8).toBeCloseTo(skin.metal, 9);
    const post = rowsOf(made).find(({ weld }) => weld.joint === 'rail-lapped')!;
    expect(post.weld.symbol).toMatchObject({ allRound: true, field: true, arrow: { kind: 'flare-vee', size: 0.1875 } });
  });

  it('has the welds of a crowd gate, counted by hand: 4 corners, 2 rings, a tooth at each place for one', () => {
    const made = designOf(makeBrief());
    const gate = made.parts.pieces.filter(({ place }) => place.kind === 'gate');
    expect(countOf(made, 'frame-corner')).toBe(4);
    expect(countOf(made, 'ring-leaf')).toBe(2);
    expect(countOf(made, 'tooth-rail')).toBe(made.layout.crowdGate.teeth.length);
    expect(countOf(made, 'bar-frame')).toBe(2 * gate.filter(({ place }) => place.kind === 'gate' && place.part === 'bar').length);
  });

  it('comes to the bill whole, filler as its weight', () => {
    const made = designOf(makeBrief());
    const rows = rowsOf(made);
    const bill = weldMaterialRows(made.brief, rows);
    expect(bill.every(({ item, unit }) => item === 'weld' && unit === 'ft')).toBe(true);
    expect(bill.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(rows.reduce((sum, { filler }) => sum + filler, 0), 9);
    expect(bill.reduce((sum, { quantity }) => sum + quantity * 12, 0)).toBeCloseTo(rows.reduce((sum, { length }) => sum + length, 0), 6);
    const millimeters = weldColumns('mm').find(({ name }) => name === 'length')!;
    expect(millimeters.kind === 'length' && millimeters.value(rows[0]!)).toBeCloseTo(rows[0]!.length * 25.4, 9);
  });

  it('holds for random briefs: finite, no weld without a size or a stitch, metal by the volume, as many crossings as there are', { timeout: 60_000 }, () => {
    const wrong: (string | number)[][] = [];
    let made = 0;
    for (let seed = 0; seed < 80; seed += 1) {
      const brief = randomBriefObject(seed);
      const layout = layOut(brief);
      const parts = layout.ok ? makeParts(brief, layout.layout) : null;
      if (!layout.ok || parts === null || !parts.ok) continue;
      made += 1;
      const design = { brief, layout: layout.layout, parts: parts.parts };
      const rows = rowsOf(design);
      for (const { weld, count, length, metal, filler } of rows) {
        const sound = [length, metal, filler].every((value) => Number.isFinite(value) && value > 0) && Number.isInteger(count) && filler >= metal && weld.symbol.arrow !== null;
        if (!sound) wrong.push([seed, weld.joint, count, length, metal, filler]);
      }
      if (countOf(design, 'rail-lapped') !== crossings(design)) wrong.push([seed, 'crossings', countOf(design, 'rail-lapped'), crossings(design)]);
    }
    expect(wrong).toEqual([]);
    expect(made).toBeGreaterThan(40);
  });
});
