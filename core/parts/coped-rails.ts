import { inches, pounds } from '../base/quantity.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';
import { type Brief } from '../brief/types.ts';
import { lengthAtOffset, radiusAtOffset, type Fence, type Span } from '../layout/index.ts';
import { type Section } from '../steel/index.ts';
import { bendAngle } from './bend.ts';
import { pieceKey, type DraftPiece } from './draft-piece.ts';
import { type FaultList } from './faults.ts';
import { type PostLookup } from './post-lookup.ts';
import { copeReach, type CopeReach } from './saddle.ts';
import { lengthToCut, longestStock } from './stock.ts';
import { type EndCut } from './types.ts';

/** How one end of a coped rail meets its post. */
interface CopedEnd extends CopeReach {
  readonly cut: EndCut;
}

/** The rails of a coped span: one bay each, fitted to the post at either end, whichever fence that post belongs to. */
export function copedRails(brief: Brief, fence: Fence, span: Span, posts: PostLookup, faults: FaultList): readonly DraftPiece[] {
  const { kr, rows } = fence.section;
  const radius = radiusAtOffset(fence, kr);
  const stock = longestStock(brief, fence.brief.rail.name);
  const { rail } = fence.brief;
  const pieces: DraftPiece[] = [];
  const ends = span.posts.map((_, i) => copedEnd(fence, posts(fence.run, fence.side, span.firstBay + i).section, faults));
  for (let i = 0; i < span.posts.length - 1; i++) {
    const start = ends[i]!;
    const end = ends[i + 1]!;
    if (start === null || end === null) return [];
    const between = lengthAtOffset(fence, span.railStops[i]!, span.railStops[i + 1]!, kr);
    const long = between - alongAxis(start.long, radius) - alongAxis(end.long, radius);
    const short = between - alongAxis(start.short, radius) - alongAxis(end.short, radius);
    if (short < SAME_LENGTH) {
      faults.bayShort(fence, between, between - short);
      return [];
    }
    if (lengthToCut(brief, long, radius !== null) > stock + SAME_LENGTH) {
      faults.bayOverStock(fence, lengthToCut(brief, long, radius !== null), stock);
      return [];
    }
    rows.forEach((height, row) => {
      pieces.push({
        key: pieceKey('rail', fence.run, fence.side, span.firstBay + i, row),
        kind: 'rail',
        section: rail.name,
        length: inches(long),
        lengthShort: inches(short),
        flatHeight: null,
        bend: radius === null ? null : { radius, angle: bendAngle(radius, long) },
        weight: pounds((rail.weightPerInch * (long + short)) / 2),
        run: fence.run,
        side: fence.side,
        bay: span.firstBay + i,
        bays: 1,
        ends: [start.cut, end.cut],
        place: { kind: 'rail', row, height, from: span.railStops[i]!, to: span.railStops[i + 1]! },
      });
    });
  }
  return pieces;
}

/** A square post has a flat side to meet: the rail is cut square. */
function copedEnd(fence: Fence, post: Section, faults: FaultList): CopedEnd | null {
  if (post.shape === 'rectangular') return { long: inches(post.along / 2), short: inches(post.along / 2), cut: { kind: 'square' } };
  const postRadius = inches(post.across / 2);
  const railRadius = fence.brief.rail.across / 2;
  if (!(railRadius < postRadius)) {
    faults.sharedPostThin(fence, post.name);
    return null;
  }
  return { ...copeReach(railRadius, postRadius), cut: { kind: 'cope', postRadius } };
}

/** The length of axis that a point at this distance from the post's center takes: on an arc it subtends 2·asin(q / 2Rr). */
function alongAxis(reach: number, radius: number | null): number {
  return radius === null ? reach : radius * 2 * Math.asin(reach / (2 * radius));
}
