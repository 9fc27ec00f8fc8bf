/** Rails of ramps against the geometry contract and figures by hand. */
import { describe, expect, it } from 'vitest';
import { degrees, inches } from '../../../core/base/quantity.ts';
import { type Brief } from '../../../core/brief/types.ts';
import { saddleReach, slopeCopeReach, type Piece } from '../../../core/parts/index.ts';
import { partsOf } from '../../support/laid-out.ts';
import { LOAD, UNLOAD, withRamp } from '../../support/ramp-briefs.ts';

const piecesOf = (brief: Brief, kind: Piece['kind'], side = 'left'): readonly Piece[] =>
  partsOf(brief).pieces.filter((piece) => /load-1$/.test(piece.run) && piece.side === side && piece.kind === kind);
const firstRow = (pieces: readonly Piece[]): readonly Piece[] => pieces.filter(({ place }) => place.kind === 'rail' && place.row === 0);

describe('the saddle of a rail on a plumb post', () => {
  it('at 70° has the reach of the geometry contract (Worked values, β = 70°) at 0 and at 180°', () => {
    expect(saddleReach(1.1875, 1.4375, degrees(70), 0)).toBeCloseTo(1.0975, 4);
    expect(saddleReach(1.1875, 1.4375, degrees(70), Math.PI)).toBeCloseTo(1.962, 4);
    expect(slopeCopeReach(1.1875, 1.4375, degrees(20)).short).toBeCloseTo(1.962, 4);
  });

  it('reaches least and greatest where a walk round the branch finds it', () => {
    for (const slope of [2, 13.76, 20, 35]) {
      const beta = degrees(90 - slope);
      const round = Array.from({ length: 72001 }, (_, i) => saddleReach(1.1875, 1.4375, beta, (i * Math.PI) / 36000));
      const { long, short } = slopeCopeReach(1.1875, 1.4375, degrees(slope));
      expect(long).toBeCloseTo(Math.min(...round), 6);
      expect(short).toBeCloseTo(Math.max(...round), 6);
    }
  });
});

describe('lapped rails of a ramp', () => {
  it('run from post to post along the slope less the weld gap, and are mitred half the slope where it breaks', () => {
    // 48 in at 20°: 140.34 in up the slope (geometry contract, Worked values), one piece of 21 ft stock.
    const [dock, slope] = firstRow(piecesOf(withRamp(UNLOAD), 'rail'));
    expect(slope!.length).toBeCloseTo(140.34 - 0.125, 2);
    expect(slope!.ends[0]).toEqual({ kind: 'slope-mitre', angle: expect.closeTo(degrees(10), 12) as number });
    expect(slope!.ends[1]).toEqual({ kind: 'square' });
    expect(dock!.length).toBeCloseTo(120 - 0.125, 6);
    expect(dock!.ends[1]).toEqual(slope!.ends[0]);
  });

  it('of a ramp without a dock are square at both ends', () => {
    const rails = piecesOf(withRamp({ ...UNLOAD, dockLength: inches(0) }), 'rail');
    expect(rails).toHaveLength(5);
    for (const { ends } of rails) expect(ends).toEqual([{ kind: 'square' }, { kind: 'square' }]);
  });

  it('are jointed at posts where the stock is shorter than the slope', () => {
    const rails = firstRow(piecesOf(withRamp({ ...LOAD, surface: { kind: 'cleated', slope: degrees(8), cleat: inches(2) } }), 'rail'));
    // 48 / sin 8° = 344.9 in in four bays: 21 ft stock takes two at most.
    expect(rails.slice(0, 2).map(({ bays }) => bays)).toEqual([2, 2]);
    expect(rails[0]!.length).toBeCloseTo(48 / Math.sin(degrees(8)) / 2 - 0.125, 6);
  });
});

describe('coped rails of a ramp', () => {
  it('are one bay each, cut at 90° less the slope to plumb posts, both ends alike when turned', () => {
    const rails = firstRow(piecesOf(withRamp(UNLOAD, { construction: 'coped' }), 'rail'));
    const sloping = rails.filter(({ ends }) => ends[0].kind === 'slope-cope');
    expect(sloping).toHaveLength(2);
    for (const piece of sloping) {
      expect(piece.ends).toEqual([0, 1].map(() => ({ kind: 'slope-cope', postRadius: 1.4375, slope: degrees(20) })));
      // Short to short: half of 140.34 less 1.9620 at each end (geometry contract, Worked values).
      expect(piece.lengthShort).toBeCloseTo(140.343 / 2 - 2 * 1.962, 2);
      expect(piece.length).toBeGreaterThan(piece.lengthShort!);
    }
    const level = rails.filter(({ ends }) => ends[0].kind === 'cope');
    expect(level).toHaveLength(2);
    // Level bays of 60 in: long point reach 0.8101 (geometry contract, Worked values).
    expect(level[0]!.length).toBeCloseTo(60 - 2 * 0.8101, 3);
  });
});

describe('the posts of a ramp', () => {
  it('are as long as the line at their place, the fence over it and the footing', () => {
    const lengths = (brief: Brief): number[] => piecesOf(brief, 'post').map(({ length }) => length);
    // From the dock down: 48, 48, 48 at the break, 24 halfway, 0 at the foot; 60 over the line and 36 in the ground.
    expect(lengths(withRamp(UNLOAD)).map((length) => Number(length.toFixed(6)))).toEqual([144, 144, 144, 120, 96]);
    // From the foot up: the lowest nosing stands a riser of 48 / 14 over the ground.
    const load = lengths(withRamp(LOAD));
    expect(load[0]).toBeCloseTo(96 + 48 / 14, 6);
    expect(load.at(-1)).toBeCloseTo(144, 6);
  });
});

describe('the skins of a ramp', () => {
  it('are parallelograms on the slope, whose length and height give their area, and rectangles along the dock', () => {
    const skins = piecesOf(withRamp(UNLOAD), 'skin');
    const sloping = skins.filter(({ ends }) => ends[0].kind === 'plumb');
    const area = sloping.reduce((sum, piece) => sum + piece.length * piece.flatHeight!, 0);
    // 131.88 in of level run, 58 in plumb.
    expect(area / (131.879 * 58)).toBeCloseTo(1, 4);
    for (const piece of sloping) expect(piece.flatHeight).toBeCloseTo(58 * Math.cos(degrees(20)), 6);
    expect(skins.filter(({ ends }) => ends[0].kind === 'square').reduce((sum, piece) => sum + piece.length, 0)).toBeCloseTo(120, 6);
  });
});
