/** What holds for any ramp that can be made: random briefs over the full ranges, fixed seeds. */
import { describe, expect, it } from 'vitest';
import { type Brief } from '../../../core/brief/types.ts';
import { isJambedGate, layOut, type Fence, type Layout, type Ramp } from '../../../core/layout/index.ts';
import { makeParts, type Parts, type Piece } from '../../../core/parts/index.ts';
import { mirrorRampBrief, randomRampBrief } from '../../support/random-ramp-brief.ts';

interface Made {
  readonly seed: number;
  readonly brief: Brief;
  readonly layout: Layout;
  readonly parts: Parts;
}

function make(seed: number, brief: Brief): Made | null {
  const laid = layOut(brief);
  const parts = laid.ok ? makeParts(brief, laid.layout) : null;
  return laid.ok && parts?.ok === true ? { seed, brief, layout: laid.layout, parts: parts.parts } : null;
}

const SEEDS = 150;
const all = Array.from({ length: SEEDS }, (_, seed) => make(seed, randomRampBrief(seed)));
const made = all.filter((one) => one !== null);

/** Each ramp's fences with their pieces. */
const fencesOf = ({ layout, parts }: Made): readonly { readonly ramp: Ramp; readonly fence: Fence; readonly pieces: readonly Piece[] }[] =>
  layout.ramps.flatMap((ramp) => layout.fences.filter(({ run }) => run === ramp.name).map((fence) =>
    ({ ramp, fence, pieces: parts.pieces.filter((piece) => piece.run === ramp.name && piece.side === fence.side) })));

/** What gates take of a fence, jamb to jamb. */
const gapsOf = ({ layout }: Made, { run, side }: Fence): number =>
  layout.openings.reduce((sum, one) => (isJambedGate(one) && one.run === run && one.side === side ? sum + one.width : sum), 0);

/** Along the slope, up to the dock, and along the dock: by the contract's own formulas. */
function surfaceLength({ brief, figures }: Ramp): { readonly slope: number; readonly cosine: number } {
  const { surface, dockHeight: h } = brief;
  if (surface.kind === 'cleated') return { slope: h / Math.sin(surface.slope), cosine: Math.cos(surface.slope) };
  const n = Math.ceil(h / 3.5 - 1e-9);
  const cosine = surface.tread / Math.hypot(surface.tread, h / n);
  return { slope: figures.run / cosine, cosine };
}

describe('random ramps', () => {
  it('are made, most of them, and none throws', () => {
    expect(made.length).toBeGreaterThan(SEEDS * 0.6);
  });

  it('have the same pieces when mirrored throughout', () => {
    const bag = (one: Made | null): string => (one === null ? 'refused' : one.parts.pieces.map((piece) =>
      [piece.signature, piece.length.toFixed(4), (piece.lengthShort ?? 0).toFixed(4), piece.weight.toFixed(4)].join(' ')).sort().join('\n'));
    all.forEach((one, seed) => { expect([seed, bag(make(seed, mirrorRampBrief(randomRampBrief(seed)))) === bag(one)]).toEqual([seed, true]); });
  });

  it('close every row along the slope and the dock', () => {
    for (const one of made) {
      for (const { ramp, fence, pieces } of fencesOf(one)) {
        if (fence.brief.construction !== 'lapped') continue;
        const { slope } = surfaceLength(ramp);
        fence.section.rows.forEach((_, row) => {
          const own = pieces.filter(({ place }) => place.kind === 'rail' && place.row === row);
          const length = own.reduce((sum, piece) => sum + piece.length + one.brief.shop.weldGap, 0);
          // Alike pieces take the figures of the shortest, within a step of cutting.
          expect(Math.abs(length - slope - ramp.brief.dockLength + gapsOf(one, fence)), `seed ${String(one.seed)} ${ramp.name} ${fence.side}`).toBeLessThan(1e-4 * own.length + 1e-6);
        });
      }
    }
  });

  it('cover every solid side: level length times plumb height', () => {
    for (const one of made) {
      for (const { ramp, fence, pieces } of fencesOf(one)) {
        const { sheet, solidFrom, solidTo } = fence.brief;
        const solid = sheet !== null && solidTo > solidFrom;
        const area = pieces.filter(({ kind }) => kind === 'skin').reduce((sum, piece) => sum + piece.length * piece.flatHeight!, 0);
        if (solid) expect(Math.abs(area / ((ramp.length - gapsOf(one, fence)) * (solidTo - solidFrom)) - 1)).toBeLessThan(1e-4);
        else expect(area).toBe(0);
      }
    }
  });

  it('have posts whose line climbs from the foot to the dock, none of it off the straight', () => {
    for (const one of made) {
      for (const { ramp, fence } of fencesOf(one)) {
        const posts = one.layout.posts.filter(({ run, side }) => run === ramp.name && side === fence.side)
          .map((post) => ({ s: ramp.brief.kind === 'load' ? post.u : ramp.length - post.u, line: post.fenceHeight - fence.brief.height }))
          .sort((a, b) => a.s - b.s);
        const { cosine } = surfaceLength(ramp);
        const rise = Math.sqrt(1 - cosine ** 2) / cosine;
        expect(posts.at(-1)!.line).toBeCloseTo(ramp.brief.dockHeight, 6);
        for (const { s, line } of posts) expect(line).toBeCloseTo(Math.min(ramp.brief.dockHeight, posts[0]!.line + s * rise), 6);
      }
    }
  });

  it('have rails and posts of some length, no rail longer than its stock, each key once', () => {
    for (const { seed, brief, parts } of made) {
      expect(new Set(parts.pieces.map(({ key }) => key)).size).toBe(parts.pieces.length);
      for (const piece of parts.pieces) {
        expect([seed, piece.key, piece.length > 0 && piece.weight > 0 && (piece.lengthShort ?? piece.length) <= piece.length]).toEqual([seed, piece.key, true]);
        if (piece.kind === 'rail' && piece.bend === null) expect(piece.length).toBeLessThanOrEqual(Math.max(...(brief.shop.stock[piece.section] ?? [252])) + 1e-6);
      }
    }
  });

  it('stand clear of everything where nobody placed them: no foul but those of fences without ramps', () => {
    for (const { seed, brief, layout } of made) {
      const placed = new Set(brief.ramps.filter(({ at }) => at !== null).map(({ name }) => name));
      const fouls = layout.fouls.filter(({ kind, runs }) => kind !== 'foul-post' && kind !== 'foul-opening' && runs.some((run) => layout.ramps.some(({ name }) => name === run && !placed.has(name))));
      expect([seed, fouls]).toEqual([seed, []]);
      // Posts of one fence may stand too near where a brief asks for a dock that short; those of two fences never do.
      const strange = layout.fouls.filter(({ kind, runs }) => kind === 'foul-post' && runs[0] !== runs[1] && runs.some((run) => layout.ramps.some(({ name }) => name === run && !placed.has(name))));
      expect([seed, strange]).toEqual([seed, []]);
    }
  });

  it('are the same twice', () => {
    for (const { seed, parts } of made.slice(0, 20)) expect(JSON.stringify(make(seed, randomRampBrief(seed))?.parts)).toBe(JSON.stringify(parts));
  });
});
