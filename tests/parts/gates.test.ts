import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type Brief, type OpeningBrief } from '../../core/brief/types.ts';
import { copeReach, type Piece } from '../../core/parts/index.ts';
import { fences, makeBrief } from '../support/brief-builder.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';

type Place = Extract<Piece['place'], { kind: 'gate' }>;
const OPENINGS: readonly OpeningBrief[] = [
  { kind: 'man-gate', run: 'alley-1', side: 'right', at: inches(100), width: inches(16), path: 'openings[0]' },
  { kind: 'backstop', run: 'chute', at: inches(96), held: 'rope', path: 'openings[1]' },
];
const brief = (parts: Partial<Brief> = {}): Brief => ({ ...makeBrief(), openings: OPENINGS, ...parts });
const ofGate = (from: Brief, gate: string, part: Place['part']): readonly Piece[] =>
  partsOf(from).pieces.filter(({ place }) => place.kind === 'gate' && place.gate === gate && place.part === part);
const only = (pieces: readonly Piece[]): Piece => {
  expect(new Set(pieces.map(({ mark }) => mark)).size).toBe(1);
  return pieces[0]!;
};

describe('a man gate\'s pieces (sizes: common practice, no source)', () => {
  // 16 clear; half the hinges' 1 1/4 barrel to its pin, the other half to the leaf, 1/2 at the free jamb: the leaf is 14.25 wide.
  const width = 16 - 1.25 - 0.5;

  it('are a frame mitred at 45°, long point to long point its outside: 3 in over the ground to the fence\'s top', () => {
    const stile = only(ofGate(brief(), 'openings[0]', 'stile'));
    const rail = only(ofGate(brief(), 'openings[0]', 'rail'));
    // Pipe 1 1/2: 1.9 outside.
    expect([stile.length, stile.lengthShort]).toEqual([57, 57 - 3.8]);
    expect(rail.length).toBeCloseTo(width, 6);
    expect(rail.lengthShort).toBeCloseTo(width - 3.8, 6);
    for (const { ends } of [stile, rail]) expect(ends).toEqual([0, 1].map(() => ({ kind: 'mitre', angle: expect.closeTo(Math.PI / 4, 12) as number })));
  });

  it('have bars coped to the stiles, no more than 12 in apart', () => {
    const bars = ofGate(brief(), 'openings[0]', 'bar');
    const bar = only(bars);
    // Pipe 1, 1.315, on 1.9: sqrt(0.95² - 0.6575²).
    const reach = Math.sqrt(0.95 ** 2 - 0.6575 ** 2);
    expect(copeReach(1.315 / 2, 0.95).long).toBeCloseTo(reach, 9);
    expect(bar.length).toBeCloseTo(width - 1.9 - 2 * reach, 6);
    const heights = bars.map(({ place }) => (place as Place).outline).map((outline) => (outline.kind === 'bar' ? outline.a.y : NaN)).sort((a, b) => a - b);
    const edges = [4.9, ...heights, 58.1];
    edges.slice(1).forEach((y, i) => { expect(y - edges[i]! - 1.315).toBeLessThanOrEqual(12); });
  });

  it('have the fence\'s skin, and none beside an open fence', () => {
    const skin = only(ofGate(brief(), 'openings[0]', 'skin'));
    // From frame axis to frame axis; the fence is closed from 2 to 60.
    expect([skin.section, skin.flatHeight]).toEqual(['12 ga', inches(57 - 1.9)]);
    expect(skin.length).toBeCloseTo(width - 1.9, 6);
    expect(ofGate(brief({ fences: fences({ solidTo: inches(0) }) }), 'openings[0]', 'skin')).toEqual([]);
  });

  it('are listed in the opening\'s own bay, with two hinges and a spring to buy', () => {
    const { bay } = laidOut(brief()).openings[0] as { bay: number };
    for (const piece of ofGate(brief(), 'openings[0]', 'stile')) expect([piece.run, piece.side, piece.bay]).toEqual(['alley-1', 'right', bay]);
    const bought = partsOf(brief()).hardware.filter(({ path }) => path === 'openings[0]').map(({ item, quantity }) => [item, quantity]);
    expect(bought).toEqual([['hinge', 2], ['spring', 1]]);
  });
});

describe('a man gate\'s small plates (sizes: common practice, no source)', () => {
  it('are two tabs from the rails\' cattle side to the post, in the jamb\'s plane, between the rails', () => {
    const tabs = ofGate(brief(), 'openings[0]', 'tab');
    expect(tabs).toHaveLength(2);
    // Rail 2.375, post 2.875: the inner face of a plate 3/8 thick, whose outer face touches the post, meets it 0.968 short of its axis.
    const chord = Math.sqrt(1.4375 ** 2 - (1.4375 - 0.375) ** 2);
    expect(tabs[0]!.flatHeight).toBeCloseTo(2.375 + 1.4375 - chord, 6);
    const fence = laidOut(brief()).fences.find(({ run, side }) => run === 'alley-1' && side === 'right')!;
    for (const { place } of tabs) {
      const { outline } = place as Place;
      if (outline.kind !== 'plate') throw new Error('no plate');
      for (const row of fence.section.rows) expect(outline.bottom - (row + 1.1875) > 0.1 || row - 1.1875 - outline.top > 0.1).toBe(true);
    }
    expect(ofGate(brief({ fences: fences({ construction: 'coped' }) }), 'openings[0]', 'tab')).toEqual([]);
  });

  it('are two eyes at the height of a bar, a hole in each for the spring\'s 3/8 hook', () => {
    const eyes = ofGate(brief(), 'openings[0]', 'eye');
    // A 3/8 bolt's standard hole is 7/16 (AISC 360 Table J3.3, from memory).
    expect(only(eyes).flat!.holes).toMatchObject([{ kind: 'circle', radius: 7 / 32 }]);
    const heights = eyes.map(({ place }) => (place as Place).outline).map((outline) => (outline.kind === 'plate' ? (outline.bottom + outline.top) / 2 : NaN));
    expect(heights[0]).toBeCloseTo(heights[1]!, 9);
    expect(ofGate(brief(), 'openings[0]', 'bar').some(({ place }) => {
      const { outline } = place as Place;
      return outline.kind === 'bar' && Math.abs(outline.a.y - heights[0]!) < 1e-9;
    })).toBe(true);
  });
});

describe('gussets (sizes: common practice, no source)', () => {
  it('stand in the corners of a wide leaf under one mark, inside its frame and clear of its bars', () => {
    const gussets = ofGate(brief(), 'crowdPen', 'gusset');
    expect(gussets).toHaveLength(4);
    // Legs of 4, square tips of 1/2, a corner of 1/2 cut off: 16 / 2 of the triangle, what lies past the tips, less the corner.
    const outline = [[0.5, 0], [4, 0], [4, 0.5], [0.5, 4], [0, 4], [0, 0.5]] as const;
    const twice = outline.reduce((sum, [x, y], i) => { const [nx, ny] = outline[(i + 1) % 6]!; return sum + x * ny - nx * y; }, 0);
    expect(Math.abs(only(gussets).weight / (twice / 2 * 0.25 * (490 / 1728)) - 1)).toBeLessThan(0.003);
    expect(ofGate(brief(), 'openings[0]', 'gusset')).toEqual([]);
  });
});

describe('a backstop\'s pieces (sizes: common practice, no source)', () => {
  it('are a beam over both posts, an upright on each, four guides, and a leaf an inch narrower than the chute', () => {
    const beam = only(ofGate(brief(), 'openings[1]', 'beam'));
    // Posts' centers 3.9171 outward of either face, their half besides.
    expect(beam.length).toBeCloseTo(28 + 2 * 3.9171 + 2.875, 3);
    expect(ofGate(brief(), 'openings[1]', 'upright').map(({ side, length }) => [side, length])).toEqual([['left', 50], ['right', 50]]);
    expect(ofGate(brief(), 'openings[1]', 'guide')).toHaveLength(4);
    expect(only(ofGate(brief(), 'openings[1]', 'rail')).length).toBeCloseTo(27, 6);
  });

  it('have rope, pulleys and a cleat where it is held by a rope, a pin where by a pin', () => {
    const bought = (held: 'rope' | 'pin' | 'none') => partsOf(brief({ openings: [{ ...OPENINGS[1]!, held } as OpeningBrief] })).hardware
      .filter(({ path }) => path === 'openings[1]').map(({ item }) => item);
    expect(bought('rope')).toEqual(['guide-shoe', 'rope', 'pulley', 'rope-cleat']);
    expect(bought('pin')).toEqual(['guide-shoe', 'hold-pin']);
    expect(bought('none')).toEqual(['guide-shoe']);
  });
});

describe('the crowd gate\'s pieces (sizes: common practice, no source)', () => {
  it('reach from its ring hinges to the gate clearance off the face', () => {
    const rail = only(ofGate(brief(), 'crowdPen', 'rail'));
    // Pivot 4 sch 40: 2.25 to its surface, 1.5 of ring and strap; 144 less 1.
    expect(rail.length).toBe(143 - 3.75);
  });

  it('longer than their stock are butt welded of equal parts that come to the same axis', () => {
    const { shop } = makeBrief();
    const short = brief({ shop: { ...shop, stock: { 'pipe 2 sch 40': [inches(120)] } } });
    const parts = ofGate(short, 'crowdPen', 'rail');
    expect(parts).toHaveLength(4);
    for (const part of parts) expect(part.length).toBeLessThanOrEqual(120);
    // Axis 139.25 less 2.375; each half has one mitre, whose long point is half a pipe past the axis.
    expect(parts[0]!.length).toBeCloseTo((139.25 - 2.375) / 2 + 2.375 / 2, 6);
    const whole = ofGate(brief(), 'crowdPen', 'rail').reduce((sum, { weight }) => sum + weight, 0);
    expect(parts.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(whole, 6);
  });
});
