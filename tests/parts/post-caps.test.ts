/** Caps on posts: one on each open top, a little smaller than the post, a hole in it where zinc has to run. */
import { describe, expect, it } from 'vitest';
import { contourArea, flatArea } from '../../core/base/flat-curves.ts';
import { inches } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { makeParts, type Piece } from '../../core/parts/index.ts';
import { layOut } from '../../core/layout/index.ts';
import { weldRows } from '../../core/schedules/index.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';
import { randomBriefObject } from '../support/random-brief-object.ts';

const capsOf = (brief: Brief): readonly Piece[] => partsOf(brief).pieces.filter(({ kind }) => kind === 'cap');
const BACKSTOP = { kind: 'backstop', run: 'chute', at: inches(96), held: 'rope', path: 'openings[0]' } as const;

describe('cap plates (sizes: common practice, no source)', () => {
  it('close every post but the two that a backstop\'s uprights stand on', () => {
    expect(capsOf(makeBrief())).toHaveLength(laidOut(makeBrief()).posts.length);
    const brief = { ...makeBrief(), openings: [BACKSTOP] };
    expect(capsOf(brief)).toHaveLength(laidOut(brief).posts.length - 2);
  });

  it('are discs 1/16 in inside the pipe, alike under one mark', () => {
    const caps = capsOf(makeBrief());
    expect(new Set(caps.map(({ mark }) => mark)).size).toBe(2);
    // Pipe 2 1/2 and pipe 4: 2.875 and 4.5 outside (ASME B36.10M).
    for (const { length, flat, weight } of caps) {
      expect([2.75, 4.375]).toContain(length);
      expect(flat!.outer).toMatchObject({ kind: 'circle', radius: length / 2 });
      // 3/16 in of steel at 490 lb a cubic foot.
      expect(Math.abs(weight / ((Math.PI * length ** 2) / 4 * 0.1875 * (490 / 1728)) - 1)).toBeLessThan(0.003);
    }
  });

  it('are vented where they go through the bath, by the share of the pipe\'s inside that the vent table has', () => {
    const cap = capsOf(makeBrief({ shop: { coating: 'galvanized' } })).find(({ length }) => length === 2.75)!;
    // Inside 2.469: 45 % of it is a hole of 0.671 of that, up to the next 1/16.
    const hole = Math.ceil(2.469 * Math.sqrt(0.45) * 16) / 16;
    expect(flatArea(cap.flat!)).toBeCloseTo((Math.PI / 4) * (2.75 ** 2 - hole ** 2), 9);
    expect(capsOf(makeBrief()).every(({ flat }) => flat!.holes.length === 0)).toBe(true);
  });

  it('are welded all round, in the shop', () => {
    const brief = makeBrief();
    const caps = capsOf(brief);
    const rows = weldRows(brief, laidOut(brief), partsOf(brief)).filter(({ weld }) => weld.joint === 'cap-post');
    expect(rows.reduce((sum, { count }) => sum + count, 0)).toBe(caps.length);
    expect(rows.reduce((sum, row) => sum + row.length, 0)).toBeCloseTo(caps.reduce((sum, { length }) => sum + Math.PI * length, 0), 6);
    expect(rows.every(({ weld: { symbol } }) => symbol.allRound && !symbol.field)).toBe(true);
  });

  it('of random projects lie inside their posts, one on each', () => {
    for (let seed = 0; seed < 60; seed += 1) {
      const brief = randomBriefObject(seed);
      const laid = layOut(brief);
      const made = laid.ok ? makeParts(brief, laid.layout) : null;
      if (!laid.ok || made?.ok !== true) continue;
      const on = made.parts.pieces.flatMap(({ place }) => (place.kind === 'cap' ? [place.on] : []));
      expect([seed, new Set(on).size]).toEqual([seed, on.length]);
      const posts = new Map(made.parts.pieces.filter(({ kind }) => kind === 'post').map((piece) => [piece.key, piece]));
      const sizes = new Map(laid.layout.posts.map(({ run, side, bay, section }) => [`post/${run}/${side}/${String(bay)}/0`, section]));
      for (const { place, flat } of made.parts.pieces) {
        if (place.kind !== 'cap') continue;
        expect([seed, posts.has(place.on)]).toEqual([seed, true]);
        const { along, across, shape } = sizes.get(place.on)!;
        expect(contourArea(flat!.outer)).toBeLessThan(shape === 'round' ? (Math.PI * along ** 2) / 4 : along * across);
      }
    }
  });
});
