import { curveBounds, joinBounds, pointBounds, type Bounds } from '../../../../core/base/bounds.ts';
import { type BoardPicture } from '../../../../core/board/types.ts';
import { strokesOf } from '../../../../core/drafting/primitives.ts';
import { type PlanBox } from './view.ts';

/** The box round the steel of a picture, in plan inches: what stands on the ground, without what is written about it. null: there is none. */
export function steelBox({ primitives, scale }: BoardPicture): PlanBox | null {
  const bounds: Bounds[] = [];
  for (const stroke of strokesOf(primitives)) {
    if (!('pen' in stroke) || stroke.pen.layer !== 'STEEL') continue;
    if (stroke.kind === 'line') bounds.push(pointBounds([stroke.a, stroke.b]));
    else if (stroke.kind === 'arc') bounds.push(curveBounds(stroke));
    else {
      const { center: { x, y }, radius } = stroke;
      bounds.push({ left: x - radius, right: x + radius, bottom: y - radius, top: y + radius });
    }
  }
  if (bounds.length === 0) return null;
  const { left, right, bottom, top } = joinBounds(bounds);
  return { left: left / scale, right: right / scale, low: bottom / scale, high: top / scale };
}
