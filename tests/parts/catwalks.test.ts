/** Pieces of catwalks against sums of their own: the geometry contract's trapezoids, brackets at the posts, guards, toe boards, steps. */
import { describe, expect, it } from 'vitest';
import { degrees, inches, toDegrees } from '../../core/base/quantity.ts';
import { type Brief, type CatwalkBrief, type FenceBrief, type RampBrief } from '../../core/brief/types.ts';
import { type CatwalkPart, type CatwalkPlace, type Piece } from '../../core/parts/index.ts';
import { fences, makeBrief } from '../support/brief-builder.ts';
import { partsOf } from '../support/laid-out.ts';
import { LOAD, UNLOAD, withRamp } from '../support/ramp-briefs.ts';

const walk = (parts: Partial<CatwalkBrief> = {}): CatwalkBrief =>
  ({ run: 'chute', side: 'left', from: inches(0), to: null, width: inches(20), deckHeight: null, path: 'catwalks[0]', ...parts });

interface Own {
  readonly piece: Piece;
  readonly place: CatwalkPlace;
}
function steel(brief: Brief): (part: CatwalkPart) => readonly Own[] {
  const own = partsOf(brief).pieces.flatMap((piece) => (piece.place.kind === 'catwalk' ? [{ piece, place: piece.place }] : []));
  return (part) => own.filter(({ place }) => place.part === part);
}
const beside = (parts: Partial<CatwalkBrief> = {}, brief: Partial<Brief> = {}) => steel({ ...makeBrief(), ...brief, catwalks: [walk(parts)] });
const ramp = (one: RampBrief, parts: Partial<CatwalkBrief> = {}, fence: Partial<FenceBrief> = {}) =>
  steel({ ...withRamp(one, fence), catwalks: [walk({ run: one.name, ...parts })] });

// Lapped, t 0.1046, d 2.375, D 2.875: the backs of the posts lie 5.3546 from the face.
const BACK = 0.1046 + 2.375 + 2.875;
const each = (of: readonly Own[], figure: (own: Own) => number): readonly number[] => of.map(figure);

describe('a deck in a curve', () => {
  // The chute turns right at an inside face of 192: its left wall is the outer one, of 220.
  it.each([['left', 220 + BACK, 1], ['right', 192 - BACK, -1]] as const)('%s: trapezoids whose sides are chords of the contract\'s circles, mitred by half their turn', (side, radius, way) => {
    const of = beside({ run: 'chute-2', side });
    const turns = each(of('deck'), ({ piece }) => {
      // Of a trapezoid of parallel sides a and b, w apart, each end leans atan((b - a) / 2w) out of square.
      const corners = piece.flat!.outer.kind === 'path' ? piece.flat!.outer.corners : [];
      const [a, b] = [corners[1]!.x - corners[0]!.x, corners[2]!.x - corners[3]!.x];
      const half = Math.atan(Math.abs(a - b) / 2 / 20);
      expect(corners[2]!.y).toBe(20);
      // Outside the chord at the fence touches the circle with its middle: 2·R·tan; inside it ends on it: 2·R·sin. The longer side is the length.
      const long = way > 0 ? 2 * (radius + 20) * Math.tan(half) : 2 * radius * Math.sin(half);
      const short = way > 0 ? 2 * radius * Math.tan(half) : 2 * (radius * Math.cos(half) - 20) * Math.tan(half);
      expect([piece.length, Math.min(a, b)]).toEqual([expect.closeTo(long, 3), expect.closeTo(short, 3)]);
      expect(piece.weight / ((long + short) / 2 * 20)).toBeCloseTo(0.1875 * 0.2836, 2);
      return 2 * half;
    });
    expect(toDegrees(turns.reduce((sum, turn) => sum + turn, 0) as never)).toBeCloseTo(90, 6);
    const mitres = of('bearer').flatMap(({ piece }) => piece.ends.map((end) => (end.kind === 'mitre' ? end.angle : NaN)));
    expect(mitres).toHaveLength(4 * turns.length);
    for (const mitre of mitres) expect(Math.min(...turns.map((turn) => Math.abs(turn / 2 - mitre)))).toBeLessThan(1e-6);
  });
});

describe('brackets', () => {
  // Alley of 240 in straight, bays of 80: four posts.
  it('stand one on every post, square out to the open edge, and bear the bearers under the plate', () => {
    const of = beside({ run: 'alley-1', side: 'right' });
    const at = of('bracket').map(({ place: { plan } }) => plan.reduce((sum, { y }) => sum + y, 0) / plan.length).toSorted((a, b) => a - b);
    const apart = at.slice(1).map((y, i) => y - at[i]!);
    expect(apart.length).toBeGreaterThan(1);
    for (const gap of apart) expect(gap).toBeCloseTo(apart[0]!, 9);
    // No farther apart than the fence's own spacing.
    expect(apart[0]).toBeLessThanOrEqual(96);
    for (const { piece, place } of of('bracket')) {
      expect(piece.length).toBe(20);
      // 0.6 of its reach deep, the bearers 2 in on a plate of 3/16 over it: 18 - 2.1875.
      expect([piece.flatHeight, place.high, place.low]).toEqual([12, 15.8125, 3.8125]);
    }
  });
});

describe('a guard', () => {
  const tall = { height: inches(96), solidTo: inches(96), rails: 8 };
  const guarded = (law: Brief['site']['jurisdiction'], deck: number): boolean =>
    beside({ run: 'alley-1', side: 'left', deckHeight: inches(deck) }, { fences: fences(tall), site: { ...makeBrief().site, jurisdiction: law } })('top-rail').length > 0;

  // 29 CFR 1910.28(b)(1), second; the others from memory.
  it('stands from the drop that each jurisdiction names', () => {
    expect([guarded('us', 47.99), guarded('us', 48), guarded(null, 47.99), guarded(null, 48)]).toEqual([false, true, false, true]);
    expect([guarded('eu', 499 / 25.4), guarded('eu', 501 / 25.4), guarded('uk', 6), guarded('ontario', 6)]).toEqual([false, true, true, true]);
  });

  it('has its top edge 42 in over the deck, its midrail at 21, posts where parts meet', () => {
    const of = beside({ run: 'alley-1', side: 'left', deckHeight: inches(50) }, { fences: fences(tall) });
    for (const { place } of of('top-rail')) expect(place.high).toBeCloseTo(92, 9);
    for (const { place } of of('mid-rail')) expect((place.high + place.low) / 2).toBeCloseTo(71, 9);
    // One more than parts along the edge, and two beside the fence.
    expect(of('guard-post')).toHaveLength(of('deck').length + 1 + 2);
    // Down on the deck, up to the underside of a rail of NPS 1 1/2 (1.9 in).
    for (const { piece } of of('guard-post')) expect(piece.length).toBeCloseTo(42 - 1.9, 9);
  });
});

describe('steps', () => {
  it.each([[18, 2], [19, 2], [19.1, 3], [30, 4], [54, 6]])('to a deck of %f: %i equal risers', (deck, risers) => {
    const of = beside({ run: 'alley-1', side: 'left', deckHeight: inches(deck) });
    const tops = [...new Set(each(of('tread'), ({ place }) => Number(place.high.toFixed(6))))].toSorted((a, b) => a - b);
    expect(tops).toEqual(Array.from({ length: risers - 1 }, (_, i) => Number(((deck / risers) * (i + 1)).toFixed(6))));
  });
});

// The contract's worked ramp: 48 in 14 risers on treads of 14, a run of 182: slope atan(48 / 14 / 14), 13.7608°.
describe('the steel of a deck beside a ramp', () => {
  const slope = Math.atan(48 / 14 / 14);
  const of = ramp(LOAD);
  const sloped = (part: CatwalkPart): readonly Own[] => of(part).filter(({ place }) => place.leaning !== null);

  it('is plates as long as the slope, whose lengths add up to it', () => {
    const long = sloped('deck').reduce((sum, { piece }) => sum + piece.length, 0);
    expect(long).toBeCloseTo(182 / Math.cos(slope), 6);
    expect(of('deck').filter(({ place }) => place.leaning === null).reduce((sum, { piece }) => sum + piece.length, 0)).toBeCloseTo(60, 6);
  });

  it('stands on brackets that clear the bearers: plate and bearer plumb under the deck, half their own thickness down the slope', () => {
    for (const { place } of of('bracket')) {
      const u = place.roll.reduce((sum, { x }) => sum + x, 0) / place.roll.length;
      const deck = 18 + (u < 182 + 1e-6 ? 48 / 14 + u * Math.tan(slope) : 48);
      const steep = u < 182 + 1e-6;
      expect(place.high).toBeCloseTo(deck - 2.1875 / (steep ? Math.cos(slope) : 1) - (steep ? 0.1875 * Math.tan(slope) : 0), 6);
    }
  });

  it('has bearers cut plumb where it ends on the slope and mitred by half of it where it breaks', () => {
    const cuts = of('bearer').flatMap(({ piece }) => piece.ends).flatMap((end) => (end.kind === 'slope-mitre' ? [toDegrees(end.angle).toFixed(3)] : []));
    const [plumb, half] = [slope, slope / 2].map((angle) => ((angle * 180) / Math.PI).toFixed(3));
    // Two bearers each: plumb at the foot, and either side of the break.
    expect(cuts.toSorted()).toEqual([plumb!, plumb!, half!, half!, half!, half!].toSorted());
    const foot = of('bearer').find(({ piece }) => piece.ends[0].kind === 'slope-mitre' && Math.abs(piece.ends[0].angle - slope) < 1e-9)!.piece;
    // Its lower edge goes on down to the plumb cut: 2.1875 under the deck, by the slope's tangent.
    expect(foot.length - foot.lengthShort!).toBeCloseTo(2 * Math.tan(slope), 4);
  });

  it('has bars across it where it is steeper than one in eight, no more than 14 in apart along it (from memory)', () => {
    const bars = of('foot-cleat').map(({ place }) => place.roll.reduce((sum, { x }) => sum + x, 0) / 4).toSorted((a, b) => a - b);
    expect(bars[0]! / Math.cos(slope)).toBeLessThanOrEqual(14);
    expect((182 - bars.at(-1)!) / Math.cos(slope)).toBeLessThanOrEqual(14);
    for (const [i, x] of bars.slice(1).entries()) expect((x - bars[i]!) / Math.cos(slope)).toBeLessThanOrEqual(14 + 1e-6);
    for (const { piece } of of('foot-cleat')) expect([piece.section, piece.length]).toEqual(['flat 3/8 x 1', 18]);
    const shallow = (angle: number): number => ramp({ ...UNLOAD, surface: { kind: 'cleated', slope: degrees(angle), cleat: inches(2) } })('foot-cleat').length;
    // atan(1/8) = 7.125°.
    expect([shallow(7.12) > 0, shallow(7.13) > 0]).toEqual([false, true]);
  });

  it('has rails parallel to it and plumb posts: midrails coped at the slope, top rails mitred where it breaks', () => {
    for (const { piece } of sloped('mid-rail')) expect(piece.ends).toEqual([0, 1].map(() => ({ kind: 'slope-cope', postRadius: 0.95, slope: expect.closeTo(slope, 9) })));
    const top = sloped('top-rail').toSorted((a, b) => a.place.roll[0]!.x - b.place.roll[0]!.x).at(-1)!;
    expect(top.piece.ends).toEqual([{ kind: 'square' }, { kind: 'slope-mitre', angle: expect.closeTo(slope / 2, 9) }]);
    for (const { place } of sloped('top-rail')) {
      const [a, b, , d] = place.leaning!;
      expect(Math.atan2(b!.y - a!.y, b!.x - a!.x)).toBeCloseTo(slope, 9);
      // 42 in to its axis less half of NPS 1 1/2, plumb over the deck.
      expect((a!.y + d!.y) / 2 - (18 + 48 / 14 + a!.x * Math.tan(slope))).toBeCloseTo(42 - 0.95, 6);
    }
  });

  it('has toe boards whose upper edges meet over the break', () => {
    const leaning = of('toe').filter(({ piece }) => piece.flat !== undefined);
    expect(leaning).toHaveLength(2);
    for (const { piece } of leaning) {
      const corners = piece.flat!.outer.kind === 'path' ? piece.flat!.outer.corners : [];
      expect(corners[2]!.x - corners[3]!.x - (corners[1]!.x - corners[0]!.x)).toBeCloseTo(4 * Math.tan(slope / 2), 6);
    }
  });

  it('is the same steel on the other side', () => {
    const bag = (side: 'left' | 'right'): string => partsOf({ ...withRamp(LOAD), catwalks: [walk({ run: 'load-1', side })] }).pieces
      .filter(({ place }) => place.kind === 'catwalk').map(({ signature }) => signature).toSorted().join('\n');
    expect(bag('right')).toBe(bag('left'));
  });
});
