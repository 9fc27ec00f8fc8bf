/** What of the picture lies under a hand: the strokes of steel, their ends and their middles. Everything that is drawn can be chosen. */
import { angleOf, distance, sub, type Vec } from '../../../../core/base/points.ts';
import { positiveAngle } from '../../../../core/base/angle.ts';
import { curvePoint } from '../../../../core/base/curve.ts';
import { type BoardPicture } from '../../../../core/board/types.ts';
import { type Stroke, strokesOf } from '../../../../core/drafting/primitives.ts';

/** A stroke of a piece of steel. */
export type SteelStroke = Extract<Stroke, { readonly piece?: string }> & { readonly piece: string };

export const steelStrokes = ({ primitives }: Pick<BoardPicture, 'primitives'>): readonly SteelStroke[] =>
  strokesOf(primitives).filter((stroke): stroke is SteelStroke => 'piece' in stroke && stroke.piece !== undefined);

/** The place on a stroke that is nearest to another; a post counts by its middle. */
export function nearestOn(stroke: SteelStroke, at: Vec): Vec {
  switch (stroke.kind) {
    case 'circle':
      return stroke.center;
    case 'line': {
      const along = sub(stroke.b, stroke.a);
      const square = along.x ** 2 + along.y ** 2;
      if (square === 0) return stroke.a;
      const share = ((at.x - stroke.a.x) * along.x + (at.y - stroke.a.y) * along.y) / square;
      return curvePoint({ kind: 'line', a: stroke.a, b: stroke.b }, Math.min(1, Math.max(0, share)));
    }
    case 'arc': {
      const turned = positiveAngle(Math.sign(stroke.sweep) * (angleOf(sub(at, stroke.center)) - stroke.start));
      const sweep = Math.abs(stroke.sweep);
      if (turned <= sweep) return curvePoint(stroke, turned / sweep);
      const ends = [curvePoint(stroke, 0), curvePoint(stroke, 1)] as const;
      return distance(ends[0], at) <= distance(ends[1], at) ? ends[0] : ends[1];
    }
  }
}

/** Ends of a line or an arc; the middle of a post. */
export function pointsOf(stroke: SteelStroke): readonly Vec[] {
  switch (stroke.kind) {
    case 'circle':
      return [stroke.center];
    case 'line':
      return [stroke.a, stroke.b];
    case 'arc':
      return [curvePoint(stroke, 0), curvePoint(stroke, 1)];
  }
}

/** The key of the piece nearest to a place in the picture, within a distance (screen inches); null: none. A post counts to its edge. */
export function pieceAt(picture: BoardPicture, at: Vec, within: number): string | null {
  let best: { readonly key: string; readonly far: number } | null = null;
  for (const stroke of steelStrokes(picture)) {
    const middle = distance(nearestOn(stroke, at), at);
    const far = stroke.kind === 'circle' ? Math.max(0, middle - stroke.radius) : middle;
    if (far <= within && (best === null || far < best.far)) best = { key: stroke.piece, far };
  }
  return best?.key ?? null;
}
