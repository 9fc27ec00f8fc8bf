/** What holds for any project that can be made: random briefs over the full ranges, fixed seeds. */
import { describe, expect, it } from 'vitest';
import { type Brief } from '../../core/brief/types.ts';
import { layOut, lengthAtOffset, type Fence, type Layout, type Span } from '../../core/layout/index.ts';
import { fitsSheet, makeParts, type Parts, type Piece } from '../../core/parts/index.ts';
import { mirrorBrief, randomBriefObject } from '../support/random-brief-object.ts';

interface Made {
  readonly seed: number;
  readonly brief: Brief;
  readonly layout: Layout;
  readonly parts: Parts;
}

function make(seed: number, brief: Brief): Made | null {
  const result = layOut(brief);
  if (!result.ok) return null;
  const made = makeParts(brief, result.layout);
  return made.ok ? { seed, brief, layout: result.layout, parts: made.parts } : null;
}

const SEEDS = 300;
const all = Array.from({ length: SEEDS }, (_, seed) => make(seed, randomBriefObject(seed)));
const made = all.filter((one) => one !== null);

/** What does not hold, by seed and piece or row: an empty list is the test passed. */
type Wrong = (string | number)[][];

const railsOf = (one: Made, fence: Fence, span: Span): Map<number, Piece[]> => {
  const rows = new Map<number, Piece[]>();
  for (const piece of one.parts.pieces) {
    if (piece.place.kind !== 'rail' || piece.run !== fence.run || piece.side !== fence.side) continue;
    if (piece.bay < span.firstBay || piece.bay >= span.firstBay + span.posts.length) continue;
    const row = rows.get(piece.place.row) ?? [];
    row.push(piece);
    rows.set(piece.place.row, row);
  }
  return rows;
};

describe('random projects', () => {
  it('are made, most of them, and none throws', () => {
    expect(made.length).toBeGreaterThan(SEEDS * 0.6);
  });

  it('have the same pieces when mirrored throughout', () => {
    const bag = (parts: Parts): readonly string[] =>
      parts.pieces.map((p) => [p.signature, p.length.toFixed(4), (p.lengthShort ?? 0).toFixed(4), p.weight.toFixed(4)].join(' ')).sort();
    all.forEach((one, seed) => {
      const other = make(seed, mirrorBrief(randomBriefObject(seed)));
      expect(other === null).toBe(one === null);
      if (one !== null && other !== null) expect([seed, bag(other.parts).join('\n') === bag(one.parts).join('\n')]).toEqual([seed, true]);
    });
  });

  it('have pieces of some length and weight, each with a key and a mark of its own kind', () => {
    const wrong: Wrong = [];
    for (const { seed, parts } of made) {
      expect(new Set(parts.pieces.map((p) => p.key)).size).toBe(parts.pieces.length);
      const signatures = new Map<string, string>();
      for (const piece of parts.pieces) {
        const sized = piece.length > 0 && piece.weight > 0 && (piece.lengthShort ?? 1) > 0 && (piece.flatHeight ?? 1) > 0;
        const marked = (signatures.get(piece.mark) ?? piece.signature) === piece.signature;
        if (!sized || !marked || (piece.lengthShort ?? 0) > piece.length) wrong.push([seed, piece.key]);
        signatures.set(piece.mark, piece.signature);
      }
    }
    expect(wrong).toEqual([]);
  });

  it('close every row: its pieces and gaps are the axis from stop to stop, bay after bay', () => {
    const wrong: Wrong = [];
    for (const one of made) {
      const { weldGap } = one.brief.shop;
      for (const fence of one.layout.fences) {
        for (const span of fence.spans) {
          const axis = lengthAtOffset(fence, span.railStops[0]!, span.railStops.at(-1)!, fence.section.kr);
          const rows = railsOf(one, fence, span);
          expect(rows.size).toBe(fence.brief.rails);
          for (const [row, pieces] of rows) {
            const lapped = fence.brief.construction === 'lapped';
            let bay = span.firstBay;
            for (const piece of pieces) {
              if (piece.bay !== bay) wrong.push([one.seed, piece.key]);
              bay += piece.bays;
            }
            const length = pieces.reduce((sum, piece) => sum + piece.length + (lapped ? weldGap : 0), 0);
            // Alike pieces take the figures of the shortest, within a step of cutting.
            const closes = lapped ? Math.abs(length - axis) < 1e-4 * pieces.length + 1e-6 : length < axis;
            if (!closes || bay !== span.firstBay + span.posts.length - 1) wrong.push([one.seed, fence.run, fence.side, row, length, axis]);
          }
        }
      }
    }
    expect(wrong).toEqual([]);
  });

  it('end every rail on a post\'s center, at the mitre, or (lapped) at a jamb', () => {
    const wrong: Wrong = [];
    for (const one of made) {
      for (const fence of one.layout.fences) {
        for (const span of fence.spans) {
          const stops = new Set<number>(span.posts);
          const { start, end } = span;
          const lapped = fence.brief.construction === 'lapped';
          if (start.kind === 'mitre' || (lapped && start.kind === 'jamb')) stops.add(span.railStops[0]!);
          if (end.kind === 'mitre' || (lapped && end.kind === 'jamb')) stops.add(span.railStops.at(-1)!);
          for (const pieces of railsOf(one, fence, span).values()) {
            for (const { key, place } of pieces) {
              if (place.kind !== 'rail' || !stops.has(place.from) || !stops.has(place.to)) wrong.push([one.seed, key]);
            }
          }
        }
      }
    }
    expect(wrong).toEqual([]);
  });

  it('cut every rail from a stock length, grip included', () => {
    const wrong: Wrong = [];
    for (const { seed, brief, parts } of made) {
      for (const piece of parts.pieces) {
        if (piece.kind !== 'rail') continue;
        // The order length of the geometry contract, and the project contract's 21 ft where the shop names no stock.
        const order = piece.length + (piece.bend === null ? 0 : 2 * brief.shop.grip);
        const stock = Math.max(...(brief.shop.stock[piece.section] ?? [252]));
        if (order > stock + 1e-6) wrong.push([seed, piece.key, order, stock]);
      }
    }
    expect(wrong).toEqual([]);
  });

  it('part neighboring lapped rows at different posts, or all rows at the same ones with the fewest pieces', () => {
    for (const one of made) {
      for (const fence of one.layout.fences) {
        if (fence.brief.construction !== 'lapped') continue;
        for (const span of fence.spans) {
          const rows = [...railsOf(one, fence, span).entries()].sort(([a], [b]) => a - b).map(([, pieces]) => pieces);
          const joints = rows.map((pieces) => pieces.slice(1).map((piece) => piece.bay));
          const counts = rows.map((pieces) => pieces.length);
          const fewest = Math.min(...counts);
          rows.slice(1).forEach((_, i) => {
            const shared = joints[i + 1]!.filter((joint) => joints[i]!.includes(joint));
            if (shared.length > 0) expect(joints[i + 1]).toEqual(joints[i]);
            expect(counts[i + 1]).toBeLessThanOrEqual(fewest + 1);
          });
          expect(counts[0]).toBe(fewest);
        }
      }
    }
  });

  it('cover every solid side from end to end and from solidFrom to solidTo, with pieces that fit the stock sheets', () => {
    const wrong: Wrong = [];
    for (const one of made) {
      for (const fence of one.layout.fences) {
        for (const span of fence.spans) {
          const { solidFrom, solidTo, sheet } = fence.brief;
          const skins = one.parts.pieces.filter((p) => p.kind === 'skin' && p.run === fence.run && p.side === fence.side
            && p.bay >= span.firstBay && p.bay < span.firstBay + span.posts.length);
          const solid = sheet !== null && solidTo > solidFrom;
          expect(skins.length > 0).toBe(solid);
          if (!solid) continue;
          const area = skins.reduce((sum, p) => sum + p.length * p.flatHeight!, 0);
          const flat = lengthAtOffset(fence, span.skinFrom, span.skinTo, sheet.thickness / 2);
          expect(Math.abs(area / (flat * (solidTo - solidFrom)) - 1)).toBeLessThan(1e-5);
          for (const { key, place, length, flatHeight } of skins) {
            if (place.kind !== 'skin') throw new Error(`a skin without its place: ${key}`);
            const fits = fitsSheet(one.brief.shop.sheets, length, flatHeight!);
            const partsOnRails = [place.bottom, place.top].every((edge) => [solidFrom, solidTo, ...fence.section.rows].some((h) => Math.abs(h - edge) < 1e-9));
            const partsOnPosts = [place.from, place.to].every((end) => [span.skinFrom, span.skinTo, ...span.posts].includes(end));
            if (!fits || !partsOnRails || !partsOnPosts) wrong.push([one.seed, key]);
          }
        }
      }
    }
expect(wrong).toEqual([]);
  });

  it('have one post piece for each post and stand in the order of the walk', () => {
    for (const { layout, parts } of made) {
      expect(parts.pieces.filter((p) => p.kind === 'post')).toHaveLength(layout.posts.length);
      const order = layout.runs.map((run) => run.name);
      const places = parts.pieces.map((p) => order.indexOf(p.run) * 1e6 + (p.side === 'left' ? 0 : 5e5) + p.bay);
      expect(places).toEqual([...places].sort((a, b) => a - b));
    }
  });

  it('are the same twice', () => {
    for (const { seed, parts } of made.slice(0, 40)) expect(JSON.stringify(make(seed, randomBriefObject(seed))?.parts)).toBe(JSON.stringify(parts));
  });
});
