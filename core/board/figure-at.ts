import { angleOf, distance, sub, type PlanPoint } from '../base/points.ts';
import { type Drag } from './types.ts';

const TURN = 2 * Math.PI;

/**
 * The figure (inches or radians) that a field has when its handle is dragged to `point`. Pure. `near` is the figure a moment before: of
 * the angles that look alike, a turn apart, the one nearest to it is taken, so that a drag goes on past half a turn.
 */
export function figureAt(drag: Drag, point: PlanPoint, near: number): number {
  return drag.offset + drag.factor * placeOf(drag, point, near);
}

function placeOf(drag: Drag, point: PlanPoint, near: number): number {
  switch (drag.kind) {
    case 'along':
      return (point.x - drag.origin.x) * Math.cos(drag.along) + (point.y - drag.origin.y) * Math.sin(drag.along);
    case 'away':
      return distance(drag.center, point);
    case 'round': {
      const seen = angleOf(sub(point, drag.center)) - drag.from;
      const before = (near - drag.offset) / drag.factor;
      return seen + TURN * Math.round((before - seen) / TURN);
    }
  }
}
