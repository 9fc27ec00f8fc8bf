/** Rails of a ramp's fence: parallel to the line that it follows, jointed where the slope breaks (geometry contract, Ramps). */
import { inches, pounds, radians, type Radians } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Brief } from '../../brief/types.ts';
import { rampParts, type Fence, type Ramp, type Span } from '../../layout/index.ts';
import { pieceKey, type DraftPiece } from '../draft-piece.ts';
import { type FaultList } from '../faults.ts';
import { jointPatterns, type Joints } from '../joint-patterns.ts';
import { copeReach, slopeCopeReach } from '../saddle.ts';
import { longestStock } from '../stock.ts';
import { type EndCut } from '../types.ts';

/** A stretch of a ramp's fence of one slope. */
export interface SlopedSpan {
  readonly fence: Fence;
  readonly span: Span;
  /** 0 along the dock. */
  readonly slope: Radians;
  /** The angle that each end's neighbor turns from it; 0 where there is none. */
  readonly turns: readonly [number, number];
}

/** The spans of a ramp's fence, each with its slope. */
export function slopedSpans(ramp: Ramp, fence: Fence): readonly SlopedSpan[] {
  const dock = rampParts(ramp).find(({ kind }) => kind === 'dock');
  return fence.spans.map((span) => {
    const level = dock !== undefined && span.posts[0]! > dock.from - SAME_LENGTH && span.posts[span.posts.length - 1]! < dock.to + SAME_LENGTH;
    const turn = (end: Span['start']): number => (end.kind === 'joint' ? ramp.figures.slope : 0);
    return { fence, span, slope: radians(level ? 0 : ramp.figures.slope), turns: [turn(span.start), turn(span.end)] };
  });
}

/** Whole bays as long as the stock allows; a mitre of half the turn where the slope breaks, square otherwise. */
export function lappedSlopeRails(brief: Brief, { fence, span, slope, turns }: SlopedSpan, faults: FaultList): readonly DraftPiece[] {
  const { rail } = fence.brief;
  const stock = longestStock(brief, rail.name);
  const stops = span.railStops;
  const bays = stops.length - 1;
  const length = (from: number, to: number): number => (stops[to]! - stops[from]!) / Math.cos(slope) - brief.shop.weldGap;
  const fits = (from: number, to: number): boolean => length(from, to) <= stock + SAME_LENGTH;
  if (length(0, 1) < SAME_LENGTH) {
    faults.bayShort(fence, length(0, 1) + brief.shop.weldGap, brief.shop.weldGap);
    return [];
  }
  if (!fits(0, 1)) {
    faults.bayOverStock(fence, length(0, 1), stock);
    return [];
  }
  const { even, odd } = jointPatterns(bays, fits);
  const rowOf = (joints: Joints, row: number): readonly DraftPiece[] => joints.slice(1).map((to, i) => {
    const from = joints[i]!;
    return railPiece({ fence, span, from, to, row }, {
      long: length(from, to), short: null, ends: [mitre(from === 0 ? turns[0] : 0), mitre(to === bays ? turns[1] : 0)],
    });
  });
  return fence.section.rows.flatMap((_, row) => rowOf(row % 2 === 0 ? even : odd, row));
}

const mitre = (turn: number): EndCut => (turn === 0 ? { kind: 'square' } : { kind: 'slope-mitre', angle: radians(turn / 2) });

/** One bay each, coped to the plumb post at either end. */
export function copedSlopeRails(brief: Brief, { fence, span, slope }: SlopedSpan, faults: FaultList): readonly DraftPiece[] {
  const { rail, post } = fence.brief;
  const postRadius = inches(post.across / 2);
  const reach = slope === 0 ? copeReach(rail.across / 2, postRadius) : slopeCopeReach(rail.across / 2, postRadius, slope);
  const cut: EndCut = slope === 0 ? { kind: 'cope', postRadius } : { kind: 'slope-cope', postRadius, slope };
  const stock = longestStock(brief, rail.name);
  const pieces: DraftPiece[] = [];
  for (let from = 0; from < span.posts.length - 1; from++) {
    const between = (span.railStops[from + 1]! - span.railStops[from]!) / Math.cos(slope);
    const long = between - 2 * reach.long;
    const short = between - 2 * reach.short;
    if (short < SAME_LENGTH) {
      faults.bayShort(fence, between, 2 * reach.short);
      return [];
    }
    if (long > stock + SAME_LENGTH) {
      faults.bayOverStock(fence, long, stock);
      return [];
    }
    pieces.push(...fence.section.rows.map((_, row) => railPiece({ fence, span, from, to: from + 1, row }, { long, short, ends: [cut, cut] })));
  }
  return pieces;
}

interface Where {
  readonly fence: Fence;
  readonly span: Span;
  readonly from: number;
  readonly to: number;
  readonly row: number;
}
interface Cut {
  readonly long: number;
  readonly short: number | null;
  readonly ends: readonly [EndCut, EndCut];
}

function railPiece({ fence, span, from, to, row }: Where, { long, short, ends }: Cut): DraftPiece {
  const { rail } = fence.brief;
  return {
    key: pieceKey('rail', fence.run, fence.side, span.firstBay + from, row),
    kind: 'rail',
    section: rail.name,
    length: inches(long),
    lengthShort: short === null ? null : inches(short),
    flatHeight: null,
    bend: null,
    weight: pounds((rail.weightPerInch * (long + (short ?? long))) / 2),
    run: fence.run,
    side: fence.side,
    bay: span.firstBay + from,
    bays: to - from,
    ends,
    place: { kind: 'rail', row, height: fence.section.rows[row]!, from: span.railStops[from]!, to: span.railStops[to]! },
  };
}
