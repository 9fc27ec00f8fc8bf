/** Welds of a catwalk, counted on a deck of three bays by hand; sizes by the table of the weld rule. */
import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type WeldRow, weldRows } from '../../core/schedules/index.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';

describe('the welds of a catwalk', () => {
  // Along the whole of a straight alley of 240, no guard at 18 in: deck parts of a landing of 22 at each end and the bays between.
  const brief = { ...makeBrief(), catwalks: [{ run: 'alley-1', side: 'left' as const, from: inches(0), to: null, width: inches(20), deckHeight: null, path: 'catwalks[0]' }] };
  const parts = partsOf(brief);
  const rows = weldRows(brief, laidOut(brief), parts);
  const row = (joint: WeldRow['weld']['joint']): WeldRow => rows.find(({ weld }) => weld.joint === joint)!;
  const count = (part: string): number => parts.pieces.filter(({ place }) => place.kind === 'catwalk' && place.part === part).length;

  it('are at each bracket a fillet on both sides, as long as it is deep, of 1/8 in on a wall of 0.203', () => {
    const { weld, count: brackets, length } = row('bracket-post');
    expect([weld.symbol.arrow?.size, weld.symbol.other?.size, weld.thinner, weld.symbol.field]).toEqual([0.125, 0.125, 0.203, true]);
    expect([brackets, length]).toEqual([count('bracket'), count('bracket') * 12 * 2]);
    // Two bearers on each, 2 in wide, on both sides.
    expect([row('bearer-bracket').count, row('bearer-bracket').length]).toEqual([2 * count('bracket'), 2 * count('bracket') * 2 * 2]);
  });

  it('join two rows of bearers between all parts of the deck, and the deck to both in stitches', () => {
    expect(row('bearer-joint').count).toBe(2 * (count('deck') - 1));
    expect(row('bearer-joint').length).toBeCloseTo(2 * (count('deck') - 1) * 8, 9);
    expect(row('deck-bearer').count).toBe(2 * count('deck'));
    expect(row('deck-bearer').length).toBeLessThan(2 * 240);
  });

  it('join each tread at both ends along both edges, and the two stringers of either flight to the deck', () => {
    expect([count('tread'), row('tread-stringer').length]).toEqual([2, 2 * 2 * 2 * 10]);
    expect(row('stringer-deck').count).toBe(4);
    expect(rows.some(({ weld }) => weld.joint === 'guard-post' || weld.joint === 'guard-mitre')).toBe(false);
  });
});
