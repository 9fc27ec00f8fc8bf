import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type Brief, type HoldingPenBrief, type OpeningBrief } from '../../core/brief/types.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';
import { holdingPen, thinPost } from '../support/random-holding.ts';
import { findingOf, findingsOf } from './support/checked.ts';

const withPen = (parts: Partial<HoldingPenBrief> = {}): Brief => makeBrief({ holdingPens: [holdingPen(parts)] });

describe('holding-area (Univ. of Arkansas Extension, companion to MP239)', () => {
  it('is the clear area of each pen by its head: just met, just missed', () => {
    // 40 ft by 30 ft is 1200 ft2.
    expect(findingOf(withPen(), 'holding-area')).toMatchObject({ result: 'ok', measured: 20, limit: '>= 20', unit: 'ft2' });
    expect(findingOf(withPen({ width: inches(359) }), 'holding-area')).toMatchObject({ result: 'look', measured: (480 * 359) / 144 / 60 });
    expect(findingOf(withPen({ head: 61 }), 'holding-area').result).toBe('look');
    const calves = makeBrief({ cattle: { ...makeBrief().cattle, kind: 'calf' }, holdingPens: [holdingPen({ head: 85 }), holdingPen({ name: 'hold-2', head: 86, path: 'holdingPens[1]' })] });
    expect(findingsOf(calves, 'holding-area').map(({ result }) => result)).toEqual(['ok', 'look']);
  });

  it('has no subject where there is no pen', () => {
    expect(findingOf(makeBrief(), 'holding-area')).toMatchObject({ result: 'ok', measured: null, where: 'none in this project' });
  });
});

describe('a pen gate', () => {
  const gateOf = (brief: Brief, id: 'hinge-load' | 'swing-foul') => findingsOf(brief, id).filter(({ where }) => where.includes('holdingPens[0]'));

  it('as wide as its alley opens across it, clear of the face across; a wider one is a Fix (memory)', () => {
    // The pin stands t + 0.95 outward of the face and 1 in off its jamb, the leaf stops 1 in off the other: its corner reaches across.
    const tip = (gate: number): number => Math.hypot(gate - 2, 0.95) - 0.1046 - 0.95;
    expect(tip(144)).toBeLessThan(144);
    expect(gateOf(withPen(), 'swing-foul')).toEqual([]);
    const just = 144 + 3.04;
    expect(tip(just)).toBeLessThan(144);
    expect(gateOf(withPen({ gate: inches(just) }), 'swing-foul')).toEqual([]);
    expect(tip(just + 0.02)).toBeGreaterThan(144);
    expect(gateOf(withPen({ gate: inches(just + 0.02) }), 'swing-foul')).toEqual([expect.objectContaining({ result: 'fix' })]);
    expect(gateOf(withPen({ gate: inches(200), swings: 'out' }), 'swing-foul')).toEqual([]);
  });

  it('hangs on a post by its width, and drops too far on one as thin as the fence\'s (memory)', () => {
    expect(gateOf(withPen(), 'hinge-load').map(({ result }) => result)).toEqual(['ok', 'ok']);
    expect(gateOf(withPen({ hingePost: thinPost() }), 'hinge-load').map(({ result }) => result)).toEqual(['look', 'ok']);
  });
});

describe('the pieces of a latched gate (sizes: common practice, no source)', () => {
  const openings: readonly OpeningBrief[] = [
    { kind: 'pen-gate', run: 'alley-1', side: 'right', at: inches(120), width: inches(96), swings: 'in', hangs: 'first', hingePost: null, path: 'openings[0]' },
    { kind: 'alley-gate', run: 'chute-2', side: 'left', at: inches(100), width: inches(28), swings: 'forward', hingePost: null, path: 'openings[1]' },
  ];
  const brief = makeBrief({ openings });
  const of = (gate: string, part: string) => partsOf(brief).pieces.filter(({ place }) => place.kind === 'gate' && place.gate === gate && place.part === part);

  it('are a frame from the hinges\' barrels to 1 in off the free jamb, a strap, a bolt in two sleeves, a keeper and a stop', () => {
    // 96 clear: 2 for the barrel, 1 at the free end.
    expect(of('openings[0]', 'rail').map(({ length }) => length)).toEqual([93, 93].map((value) => expect.closeTo(value, 6) as number));
    expect(of('openings[0]', 'stile').map(({ length }) => length)).toEqual([54, 54]);
    const [strap] = of('openings[0]', 'strap');
    expect(strap!.length).toBeCloseTo(Math.hypot(93 - 1.9, 54 - 1.9), 6);
    expect(['bolt', 'sleeve', 'handle', 'keeper', 'stop'].map((part) => of('openings[0]', part).length)).toEqual([1, 2, 1, 1, 1]);
    // A narrow leaf needs no strap; on the face across a run the keeper is a sleeve; its hinges reach through its own fence.
    expect(['strap', 'bolt', 'sleeve', 'keeper', 'bracket'].map((part) => of('openings[1]', part).length)).toEqual([0, 1, 2, 1, 2]);
  });

  it('a keeper has its hole, and weighs so much less', () => {
    const [keeper] = of('openings[0]', 'keeper');
    expect(keeper!.flat?.holes).toHaveLength(1);
    expect(keeper!.weight).toBeCloseTo((4 * 3 - Math.PI * 0.625 ** 2) * 0.375 * 0.2836, 2);
  });

  it('an alley gate opens along its fence, and on an outer wall only until its end comes to 1/4 in of it', () => {
    const [, gate] = laidOut(brief).openings;
    if (gate?.kind !== 'alley-gate') throw new Error('no alley gate');
    const { center } = laidOut(brief).runs.find(({ name }) => name === 'chute-2')!.path as { center: { x: number; y: number } };
    const { pin, shut, turn, reach } = gate.swing;
    // The far corner of the open leaf, half the frame aside of its axis toward the wall; the wall's radius is 220.
    const way = shut + turn;
    const corners = [0.95, -0.95].map((aside) => Math.hypot(
      pin.x + reach * Math.cos(way) - aside * Math.sin(way) - center.x, pin.y + reach * Math.sin(way) + aside * Math.cos(way) - center.y));
    expect(Math.max(...corners)).toBeCloseTo(220 - 0.25, 6);
    expect(Math.abs(turn)).toBeLessThan(Math.PI / 2);
  });
});
