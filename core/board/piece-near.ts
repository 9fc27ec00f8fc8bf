import { distance, type PlanPoint } from '../base/points.ts';
import { type DrawInput } from '../drawings/index.ts';
import { faceCurve, type Fence } from '../layout/index.ts';
import { type Piece } from '../parts/index.ts';
import { nearestOnCurve } from './nearest-on-curve.ts';

/** What a click that lies on several is taken for: what stands out from above comes first. */
const ORDER: readonly Piece['kind'][] = ['post', 'plate', 'rail', 'skin'];

/**
 * The key of the piece that is nearest to a plan point, seen from above, no farther than `reach` inches from its edge; null where there is
 * none. Of rails over one another the highest, of skins the lowest course: those are what the board draws.
 */
export function pieceNear(input: Pick<DrawInput, 'layout' | 'parts'>, point: PlanPoint, reach: number): string | null {
  const fences = new Map(input.layout.fences.map((fence) => [`${fence.run} ${fence.side}`, fence]));
  const sizes = new Map(input.layout.posts.map((post) => [`${post.run} ${post.side} ${String(post.bay)}`, post.section.across]));
  let best: { readonly key: string; readonly away: number; readonly order: number } | null = null;
  for (const piece of input.parts.pieces) {
    const half = (sizes.get(`${piece.run} ${piece.side} ${String(piece.bay)}`) ?? 0) / 2;
    const away = awayFrom(piece, fences.get(`${piece.run} ${piece.side}`), half, point);
    const order = ORDER.indexOf(piece.kind);
    if (away > reach || (best !== null && (away > best.away || (away === best.away && order >= best.order)))) continue;
    best = { key: piece.key, away, order };
  }
  return best?.key ?? null;
}

/** How far a point lies from a piece's edge, 0 on it; infinite where the piece is under another. `half`: of a post, its half size. */
function awayFrom(piece: Piece, fence: Fence | undefined, half: number, point: PlanPoint): number {
  const { place } = piece;
  switch (place.kind) {
    case 'post':
      return Math.max(0, distance(place.at, point) - half);
    // Gates have no place of their own in the plan: they are found on their drawings.
    case 'gate':
      return Infinity;
    case 'plate':
      return nearestOnCurve({ kind: 'line', a: place.a, b: place.b }, point).away;
    case 'skin': {
      if (fence === undefined || place.bottom > fence.brief.solidFrom) return Infinity;
      const { t } = fence.section;
      return Math.max(0, nearestOnCurve(faceCurve(fence, place.from, place.to, t / 2), point).away - t / 2);
    }
    case 'rail': {
      if (fence === undefined || place.row !== fence.section.rows.length - 1) return Infinity;
      const { kr, d } = fence.section;
      return Math.max(0, nearestOnCurve(faceCurve(fence, place.from, place.to, kr), point).away - d / 2);
    }
    // What lies across a ramp is shown there by lines alone.
    case 'deck':
    case 'cleat':
    case 'bumper':
      return Infinity;
  }
}
