/** Steel from above: skins, the highest rail of each fence, posts, closing plates, each with its piece's key; the centerline. */
import { type Curve } from '../../base/curve.ts';
import { type PlanPoint, type ViewPoint } from '../../base/points.ts';
import { PENS } from '../../drafting/kit.ts';
import { type Shape } from '../../drafting/model.ts';
import { deckPlanShapes } from '../../drawings/catwalks/shapes.ts';
import { gatePlanShapes } from '../../drawings/gate-plan.ts';
import { rampsFromAbove } from '../../drawings/ramps/from-above.ts';
import { roofShapes } from '../../drawings/yard/roof-shapes.ts';
import { postPieces, postShape, walkShapes } from '../../drawings/site-view.ts';
import { faceCurve, type Fence } from '../../layout/index.ts';
import { type Piece } from '../../parts/index.ts';
import { type Contributor } from './show.ts';

/** A rail is drawn by its two edges where they stand at least so far apart on the screen, inches; else by its axis. */
const EDGES_FROM = 0.06;

export const steel: Contributor = ({ input: { layout, parts }, options: { scale } }) => {
  const fences = new Map(layout.fences.map((fence) => [fenceKey(fence), fence]));
  const closed = new Set(parts.pieces.filter((piece) => piece.kind === 'skin').map(fenceKey));
  const pieceOf = postPieces(parts);
  return {
    steel: [
      ...parts.pieces.flatMap((piece) => shapesOf(piece, fences.get(fenceKey(piece)), closed.has(fenceKey(piece)), scale)),
      ...layout.posts.map((post) => postShape(post, pieceOf(post))),
      ...rampsFromAbove(layout, new Set(layout.ramps.map((ramp) => ramp.name))),
      ...roofShapes(layout, new Set(['squeeze-pad'])),
      ...walkShapes(layout, new Set(layout.runs.map((run) => run.name))),
      ...deckPlanShapes(layout, new Set(layout.runs.map((run) => run.name))),
      ...gatePlanShapes(layout, new Set(layout.runs.map((run) => run.name))),
    ],
  };
};

const fenceKey = ({ run, side }: Pick<Fence, 'run' | 'side'>): string => `${run} ${side}`;

/** The plan is shown as it lies: its frame is the view's. */
const seen = (curve: Curve<PlanPoint>): Curve<ViewPoint> => curve as unknown as Curve<ViewPoint>;

/** `closed`: whether the fence has a skin, which then is its strong line. Posts are drawn by themselves. */
function shapesOf(piece: Piece, fence: Fence | undefined, closed: boolean, scale: number): Shape[] {
  const { place, key } = piece;
  switch (place.kind) {
    case 'post':
    case 'cap':
    case 'deck':
    case 'cleat':
    case 'form':
    case 'bumper':
      return [];
    case 'gate':
      return [];
    case 'catwalk':
      // Its deck is shown with its steps, from the layout.
      return [];
    case 'plate':
      return [{ kind: 'curve', curve: seen({ kind: 'line', a: place.a, b: place.b }), pen: PENS.outline, piece: key }];
    case 'skin':
      // Of courses one over another, the lowest stands for all.
      if (fence === undefined || place.bottom > fence.brief.solidFrom) return [];
      return [{ kind: 'curve', curve: seen(faceCurve(fence, place.from, place.to, 0)), pen: PENS.outline, piece: key }];
    case 'rail': {
      if (fence === undefined || place.row !== fence.section.rows.length - 1) return [];
      const { kr, d } = fence.section;
      const offsets = d * scale < EDGES_FROM ? [kr] : [kr - d / 2, kr + d / 2];
      const pen = closed ? PENS.thin : PENS.outline;
      return offsets.map((offset) => ({ kind: 'curve', curve: seen(faceCurve(fence, place.from, place.to, offset)), pen, piece: key }));
    }
  }
}
