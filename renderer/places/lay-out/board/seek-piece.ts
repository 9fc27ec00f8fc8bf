import { curveBounds, joinBounds, pointBounds, type Bounds } from '../../../../core/base/bounds.ts';
import { planPoint } from '../../../../core/base/points.ts';
import { type BoardPicture } from '../../../../core/board/types.ts';
import { strokesOf } from '../../../../core/drafting/primitives.ts';
import { evenEdges, fitView, type PlanBox, type Size, type View } from './view.ts';

/** Brings the sheet to where pieces lie: no closer than so many plan inches across, so that it is seen where that is. */
const ROUND = 120;

/** The view of some pieces in the picture; null: none of them is drawn. */
export function viewOfPieces({ primitives, scale }: BoardPicture, keys: ReadonlySet<string>, now: View, size: Size): View | null {
  const bounds: Bounds[] = [];
  for (const stroke of strokesOf(primitives)) {
    if (!('piece' in stroke) || stroke.piece === undefined || !keys.has(stroke.piece)) continue;
    if (stroke.kind === 'line') bounds.push(pointBounds([stroke.a, stroke.b]));
    else if (stroke.kind === 'arc') bounds.push(curveBounds(stroke));
    else bounds.push(pointBounds([stroke.center]));
  }
  if (bounds.length === 0) return null;
  const { left, right, bottom, top } = joinBounds(bounds);
  const box: PlanBox = { left: left / scale - ROUND / 2, right: right / scale + ROUND / 2, low: bottom / scale - ROUND / 2, high: top / scale + ROUND / 2 };
  const fitted = fitView(box, size, evenEdges(60));
  // What is seen already as close as it can be is only brought to the middle.
  return fitted.scale < now.scale ? fitted : { scale: Math.min(fitted.scale, now.scale * 3), middle: planPoint((box.left + box.right) / 2, (box.low + box.high) / 2) };
}
