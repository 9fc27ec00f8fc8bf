import { describe, expect, it } from 'vitest';
import { degrees, inches } from '../../core/base/quantity.ts';
import { type Brief, type OpeningBrief, type Side } from '../../core/brief/types.ts';
import { hingeLoad } from '../../core/checks/strength/hinge-load.ts';
import { inertia, modulus } from '../../core/checks/strength/section-strength.ts';
import { arc, makeBrief, section, straight } from '../support/brief-builder.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';
import { findingOf, findingsOf, resultsOf } from './support/checked.ts';

const numbered = (openings: readonly OpeningBrief[]): readonly OpeningBrief[] => openings.map((one, i) => ({ ...one, path: `openings[${String(i)}]` }));
const brief = (openings: readonly OpeningBrief[], parts: Parameters<typeof makeBrief>[0] = {}): Brief => ({ ...makeBrief(parts), openings: numbered(openings) });
const manGate = (run: string, side: Side, at: number, width = 14): OpeningBrief => ({ kind: 'man-gate', run, side, at: inches(at), width: inches(width), path: '' });
const backstop = (at: number, held: 'rope' | 'pin' | 'none'): OpeningBrief => ({ kind: 'backstop', run: 'chute', at: inches(at), held, path: '' });

describe('sections in bending', () => {
  it('have the section modulus that the handbook prints (pipe, schedule 40: 2 0.561, 2 1/2 1.064, 3 1.724, 4 3.214 in³; second)', () => {
    for (const [name, printed] of [['2', 0.561], ['2 1/2', 1.064], ['3', 1.724], ['4', 3.214]] as const) {
      expect(modulus(section(`pipe ${name} sch 40`), 'along')).toBeCloseTo(printed, 2);
    }
  });

  it('of a tube go by the way they bend', () => {
    // 2 across, 4 along, 1/4 wall, sharp corners: (2·4³ - 1.5·3.5³)/12 along; (4·2³ - 3.5·1.5³)/12 across.
    const tube = section('tube 2 x 4 x 1/4');
    expect(inertia(tube, 'along')).toBeCloseTo(5.3073, 4);
    expect(inertia(tube, 'across')).toBeCloseTo(1.6823, 4);
  });
});

describe('a leaf on its post', () => {
  const pipe = section('pipe 4 sch 40');
  const hung = { weight: 300, center: 72, reach: 143, hinges: [11, 52] as const, inertia: inertia(pipe, 'along'), modulus: modulus(pipe, 'along') };

  it('sags by what the post\'s bending, summed up slice by slice, comes to', () => {
    // Moment at height z: the couple of pull and push above it. Curvature M/EI added twice, in thin slices (midpoint rule).
    const pull = (300 * 72) / 41;
    const moment = (z: number): number => pull * Math.max(0, 52 - z) - pull * Math.max(0, 11 - z);
    const steps = 20_000;
    let [slope, x] = [0, 0];
    const at: Record<number, number> = {};
    for (let i = 0; i < steps; i++) {
      const [z, dz] = [((i + 0.5) * 52) / steps, 52 / steps];
      const bend = moment(z) / (29e6 * hung.inertia);
      x += (slope + (bend * dz) / 2) * dz;
      slope += bend * dz;
      if (Math.abs(z + dz / 2 - 11) < dz / 2) at[11] = x;
      if (i === steps - 1) at[52] = x;
    }
    const found = hingeLoad(hung);
    expect(found.sag).toBeCloseTo(((at[52]! - at[11]!) / 41) * 143, 3);
    expect(found.pull).toBeCloseTo(pull, 9);
    // 21,600 in·lb over 3.214 in³ is 6720 psi, of 35,000.
    expect(found.stress).toBeCloseTo(6720 / 35_000, 3);
  });

  it('is judged for each leaf: drop to 1/2 in, stress to its yield (from memory, no source)', () => {
    const found = findingsOf(brief([manGate('crowd-pen', 'right', 180)]), 'hinge-load');
    expect(found.map(({ where }) => where.split(',')[0])).toEqual(['crowd gate', 'crowd gate', 'openings[0]', 'openings[0]']);
    // A post of pipe 4 sch 40 that nothing braces lets a 12 ft solid leaf drop by over half an inch; a 14 in one hardly moves its post.
    expect(found.map(({ result }) => result)).toEqual(['look', 'ok', 'ok', 'ok']);
    const thick = findingsOf(brief([], { crowdPen: { pivotPost: section('pipe 5 sch 40') } }), 'hinge-load');
    expect(thick.map(({ result }) => result)).toEqual(['ok', 'ok']);
  });

  it('just passes and just fails as its reach grows on a thin post', () => {
    const sagAt = (sixteenths: number) => findingsOf(brief([], { crowdPen: { radius: inches(sixteenths / 16), pivotPost: section('pipe 2 1/2 sch 40') } }), 'hinge-load')[0]!;
    let [low, high] = [72 * 16, 240 * 16];
    expect([sagAt(low).result, sagAt(high).result]).toEqual(['ok', 'look']);
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      if (sagAt(middle).result === 'ok') low = middle;
      else high = middle;
    }
    expect(sagAt(low).measured).toBeLessThanOrEqual(0.5);
    expect(sagAt(low).measured).toBeGreaterThan(0.49);
    expect(sagAt(high).measured).toBeGreaterThan(0.5);
  });

  it('weighs what its moving pieces weigh, by hand: a 12 ft crowd gate', () => {
    const made = brief([]);
    const pieces = partsOf(made).pieces.filter(({ place }) => place.kind === 'gate' && place.moves);
    const sum = pieces.reduce((total, piece) => total + piece.weight, 0);
    // Frame 2 sch 40, 139.25 by 57 outside: axes 2·(136.875 + 54.625) in at 3.65 lb/ft. Bars 3 of about 135.2 in of 1 1/2 at 2.72 lb/ft.
    // Skin 136.875 x 54.625 in of 12 ga at 4.375 lb/ft². Gussets 4 of 1/4 in at 10.21 lb/ft², 4 in legs with their tips 1/2 in wide: the
    // square of 4 less the two halves of 3 1/2 and the inner corner's of 1/2.
    const gussets = (4 * (16 - 3.5 ** 2 / 2 - 0.5 ** 2 / 2) * 10.21) / 144;
    const byHand = gussets + (2 * (136.875 + 54.625) * 3.65) / 12 + (3 * 135.2 * 2.72) / 12 + (136.875 * 54.625 * 4.375) / 144;
    expect(sum / byHand).toBeCloseTo(1, 2);
  });
});

describe('the open crowd gate', () => {
  it('rests clear of the closing plate, and the width left clear is reported (from memory, no source)', () => {
    const found = findingOf(brief([]), 'crowd-gate-rest');
    const { rest, from, half, swing } = laidOut(makeBrief()).crowdGate;
    expect(found).toMatchObject({ result: 'look', measured: rest!.clear });
    // The near side of the leaf begins `from` out and half its thickness aside: 1/2 in off the alley's face there.
    expect(from * Math.sin(rest!.angle) - half * Math.cos(rest!.angle)).toBeCloseTo(0.5, 9);
    // The far corner's distance to the outer face: the alley is 144 wide.
    expect(rest!.clear).toBeCloseTo(144 - (swing.reach * Math.sin(rest!.angle) + half * Math.cos(rest!.angle)), 6);
  });

  it('rests there whichever way the alley bends before it, clear of both its fences', () => {
    const even = laidOut(makeBrief()).crowdGate.rest!;
    for (const hand of ['left', 'right'] as const) {
      const alley = { runs: [arc(60, 60, hand), straight(60)] };
      expect(laidOut(makeBrief({ alley })).crowdGate.rest!.angle).toBe(even.angle);
      expect(resultsOf(brief([], { alley }), 'swing-foul')).toEqual(['ok']);
    }
  });

  it('swings to the exit, or stops short of a flat funnel', () => {
    const turn = (funnel: number): number => Math.abs(laidOut(makeBrief({ crowdPen: { funnelAngle: degrees(funnel) } })).crowdGate.swing.turn);
    expect(turn(30)).toBeCloseTo(Math.PI, 9);
    const gate = laidOut(makeBrief()).crowdGate;
    expect(turn(90)).toBeCloseTo(Math.PI - (Math.asin(0.5 / Math.hypot(gate.from, gate.half)) + Math.atan2(gate.half, gate.from)), 9);
  });
});

describe('swings', () => {
  it('of a man gate are clear of the wall across, or a Fix (from memory, no source)', () => {
    // chute-1 is 28 in wide between faces; the pin stands 5/8 + t outward of its face, the leaf's corner 5/8 before the pin.
    const at = (width: number) => findingsOf(brief([manGate('chute-1', 'left', 60, width)]), 'swing-foul');
    const reach = (width: number): number => Math.hypot(width - 0.625 - 0.5, 0.625);
    const across = 28 + 0.1046 + 0.625;
    const just = 1.125 + Math.sqrt((across - 0.001) ** 2 - 0.625 ** 2);
    expect(reach(just)).toBeLessThan(across);
    expect(at(just).map(({ result }) => result)).toEqual(['ok']);
    expect(at(just + 0.01)).toEqual([expect.objectContaining({ result: 'fix', measured: 1 })]);
    expect(at(just + 0.01)[0]!.where).toContain('chute-1 right');
  });

  it('of two man gates across from each other are clear, or a Fix', () => {
    const pair = (width: number) => resultsOf(brief([manGate('chute-1', 'left', 60, width), manGate('chute-1', 'right', 60, width)]), 'swing-foul');
    // Leaves open square to the walk from the same station: tip to tip 28 in and both offsets.
    expect(pair(14)).toEqual(['ok']);
    expect(pair(18)).toEqual(['fix']);
  });

  it('of a man gate into the crowd gate\'s sweep are for a person to look at: it stands shut', () => {
    expect(findingsOf(brief([manGate('crowd-pen', 'right', 180)]), 'swing-foul')).toEqual([expect.objectContaining({ result: 'look', measured: 0 })]);
    expect(resultsOf(brief([manGate('chute-1', 'left', 60)]), 'swing-foul')).toEqual(['ok']);
  });
});

describe('quiet', () => {
  it('is a backstop that something holds (common practice, no source)', () => {
    expect(resultsOf(brief([]), 'quiet')).toEqual(['ok']);
    expect(resultsOf(brief([backstop(96, 'rope'), backstop(400, 'pin')]), 'quiet')).toEqual(['ok']);
    expect(resultsOf(brief([backstop(96, 'rope'), backstop(400, 'none')]), 'quiet')).toEqual(['fix']);
  });
});
