import { inches } from '../base/quantity.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';
import { otherSide, type Brief } from '../brief/types.ts';
import { lengthAtOffset, radiusAtOffset, type Fence, type Span, type SpanEnd } from '../layout/index.ts';
import { bendAngle } from './bend.ts';
import { pieceKey, type DraftPiece } from './draft-piece.ts';
import { type FaultList } from './faults.ts';
import { jointPatterns, type Joints } from './joint-patterns.ts';
import { lengthToCut, longestStock } from './stock.ts';
import { type EndCut } from './types.ts';

/** The rails of a lapped span: whole bays each, as long as the stock allows, the rows' joints in turn apart. Faults: none are made. */
export function lappedRails(brief: Brief, fence: Fence, span: Span, faults: FaultList): readonly DraftPiece[] {
  const { kr, rows } = fence.section;
  const stops = span.railStops;
  const bays = stops.length - 1;
  const rolled = fence.faceRadius !== null;
  const stock = longestStock(brief, fence.brief.rail.name);
  const length = (from: number, to: number): number => lengthAtOffset(fence, stops[from]!, stops[to]!, kr) - brief.shop.weldGap;
  const fits = (from: number, to: number): boolean => lengthToCut(brief, length(from, to), rolled) <= stock + SAME_LENGTH;
  for (let bay = 0; bay < bays; bay++) {
    if (length(bay, bay + 1) < SAME_LENGTH) {
      faults.bayShort(fence, length(bay, bay + 1) + brief.shop.weldGap, brief.shop.weldGap);
      return [];
    }
    if (!fits(bay, bay + 1)) {
      faults.bayOverStock(fence, lengthToCut(brief, length(bay, bay + 1), rolled), stock);
      return [];
    }
  }
  const { even, odd } = jointPatterns(bays, fits);
  return rows.flatMap((height, row) => rowPieces(fence, span, row % 2 === 0 ? even : odd, (from, to) => ({
    key: pieceKey('rail', fence.run, fence.side, span.firstBay + from, row),
    length: inches(length(from, to)),
    place: { kind: 'rail', row, height, from: stops[from]!, to: stops[to]! },
  })));
}

function rowPieces(
  fence: Fence,
  span: Span,
  joints: Joints,
  place: (from: number, to: number) => Pick<DraftPiece, 'key' | 'length' | 'place'>,
): readonly DraftPiece[] {
  const last = span.railStops.length - 1;
  const radius = radiusAtOffset(fence, fence.section.kr);
  const { rail } = fence.brief;
  return joints.slice(1).map((to, i) => {
    const from = joints[i]!;
    const { key, length, place: where } = place(from, to);
    return {
      key,
      kind: 'rail',
      section: rail.name,
      length,
      lengthShort: null,
      flatHeight: null,
      bend: radius === null ? null : { radius, angle: bendAngle(radius, length) },
      weight: (rail.weightPerInch * length) as DraftPiece['weight'],
      run: fence.run,
      side: fence.side,
      bay: span.firstBay + from,
      bays: to - from,
      ends: endCuts(fence, from === 0 ? span.start : null, to === last ? span.end : null),
      place: where,
    };
  });
}

/** Rails are cut square but at a mitre. A straight piece can be turned over, so that its first mitre counts positive. */
function endCuts(fence: Fence, start: SpanEnd | null, end: SpanEnd | null): readonly [EndCut, EndCut] {
  const first = signedMitre(fence, start);
  const second = signedMitre(fence, end);
  const turned = fence.faceRadius === null && (first || second) < 0 ? -1 : 1;
  return [cut(first * turned), cut(second * turned)];
}

const cut = (angle: number): EndCut => (angle === 0 ? { kind: 'square' } : { kind: 'mitre', angle: angle as Extract<EndCut, { kind: 'mitre' }>['angle'] });

/** The long point lies on the side away from the corner's turn: outside the bend where the corner turns toward the bend's center. */
function signedMitre(fence: Fence, end: SpanEnd | null): number {
  if (end?.kind !== 'mitre') return 0;
  const centerSide = fence.radiusSign < 0 ? fence.side : otherSide(fence.side);
  return end.toward === centerSide ? end.mitre : -end.mitre;
}
