import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { printFault } from '../../core/brief/print-fault.ts';
import { layOut } from '../../core/layout/index.ts';
import { makeParts, type Piece } from '../../core/parts/index.ts';
import { arc, fence, fences, makeBrief, straight, type BriefParts } from '../support/brief-builder.ts';
import { partsOf } from '../support/laid-out.ts';

const rails = (parts: BriefParts, run: string, side: string): readonly Piece[] =>
  partsOf(makeBrief(parts)).pieces.filter((piece) => piece.kind === 'rail' && piece.run === run && piece.side === side);

function faultsOf(parts: BriefParts): readonly string[] {
  const brief = makeBrief(parts);
  const layout = layOut(brief);
  const made = layout.ok ? makeParts(brief, layout.layout) : layout;
  return made.ok ? [] : made.faults.map(printFault);
}

describe('lapped rails', () => {
  it('on the crowd fence are arcs of radius 145.2921 that with their gaps come to 456.4486 a row (worked values)', () => {
    const pen = rails({}, 'crowd-pen', 'right');
    for (const row of [0, 1, 2, 3, 4]) {
      const pieces = pen.filter((piece) => piece.place.kind === 'rail' && piece.place.row === row);
      expect(pieces.reduce((sum, piece) => sum + piece.length + 0.125, 0)).toBeCloseTo(456.4486, 4);
      for (const piece of pieces) expect(piece.bend?.radius).toBeCloseTo(145.2921, 9);
    }
  });

  it('take the grip of the rolls into the stock length where they are rolled, and only there', () => {
    // Two bays of 91.29 in are 182.45; with twice 8 they fit 21 ft, with twice 35 they do not.
    expect(rails({}, 'crowd-pen', 'right').some((piece) => piece.bays === 2)).toBe(true);
    expect(rails({ shop: { grip: inches(35) } }, 'crowd-pen', 'right').every((piece) => piece.bays === 1)).toBe(true);
    expect(rails({ shop: { grip: inches(35) } }, 'alley-1', 'right').every((piece) => piece.bays === 3)).toBe(true);
  });

  it('fill a stock length exactly', () => {
    const runs = [straight(240), straight(252.125)];
    expect(rails({ alley: { runs: [runs[1]!, runs[0]!] } }, 'alley-1', 'right').map((piece) => piece.length)).toEqual([252, 252, 252, 252, 252]);
    const longer = rails({ alley: { runs: [straight(252.2), straight(240)] } }, 'alley-1', 'right');
    expect(longer.every((piece) => piece.length < 252)).toBe(true);
  });

  it('lose half the weld gap at every end, free ends too', () => {
    const [only] = rails({}, 'chute-3', 'left');
    expect(only?.length).toBe(71.875);
  });

  it('are mitred at the mouth, where their axes meet, and square elsewhere', () => {
    const [funnel] = rails({}, 'junction', 'left');
    const [chute] = rails({}, 'chute-1', 'left');
    expect(funnel?.ends).toEqual([{ kind: 'square' }, { kind: 'mitre', angle: expect.closeTo(Math.PI / 12, 12) as number }]);
    expect(chute?.ends[0]).toEqual({ kind: 'mitre', angle: expect.closeTo(Math.PI / 12, 12) as number });
    // 232 - u0 - 0.3462 - 1/8 and 120 - 0.3462 - 1/8.
    expect(funnel?.length).toBeCloseTo(232 - 22.10474 - 0.34622 - 0.125, 4);
    expect(chute?.length).toBeCloseTo(120 - 0.34622 - 0.125, 4);
  });

  it('have their mitre\'s long point outside the bend of a left turn, inside that of a right turn, for a corner that turns left', () => {
    const first = (hand: 'left' | 'right'): number => {
      const cut = rails({ chute: { width: inches(28), runs: [arc(192, 60, hand), straight(60)] } }, 'chute-1', 'left')[0]!.ends[0];
      return cut.kind === 'mitre' ? cut.angle : NaN;
    };
    // The long point lies on the cattle's side of a corner that turns outward; the center of a left turn is on the other side.
    expect(first('left')).toBeGreaterThan(0);
    expect(first('right')).toBeLessThan(0);
  });

  it('are a fault where a bay is longer than the longest stock, grip and gap counted', () => {
    const short = { 'pipe 2 sch 40': [inches(90)] };
    expect(faultsOf({ shop: { stock: short } })).toEqual([
      'fences.crowdPen.postSpacing: a bay of the right fence of crowd-pen needs 107 3/16" of pipe 2 sch 40 for a rail, must be within its longest stock of 90"',
    ]);
  });

  it('are a fault where a junction\'s outer side is no longer than the weld gap', () => {
    const nearlyFlat = { funnelAngle: (Math.PI / 2 - 0.1 / 116) as never };
    expect(faultsOf({ crowdPen: nearlyFlat })[0]).toMatch(/^crowdPen\.funnelAngle: the right fence of junction leaves 1\/8" between two posts, too short for a rail/);
  });

  it('name each place in the file once', () => {
    const left = fence('fences.chute.left', { postSpacing: inches(144), solidTo: inches(0) });
    const found = faultsOf({ shop: { stock: { 'pipe 2 sch 40': [inches(70)] } }, fences: { ...fences({ postSpacing: inches(60) }), chute: { left, right: left } } });
    expect(found.map((text) => text.split(':')[0])).toEqual([...new Set(found.map((text) => text.split(':')[0]))]);
    expect(found.some((text) => text.startsWith('fences.chute.left.postSpacing: '))).toBe(true);
  });
});
