import { curveLength, curvePoint, type Curve } from '../../base/curve.ts';
import { distance, type Vec } from '../../base/points.ts';
import { positionFromStart } from '../../base/position.ts';

/** How far a point is from a line or an arc, its ends included. */
export function distanceToFace(face: Curve<Vec>, point: Vec): number {
  const length = curveLength(face);
  const along = length === 0 ? 0 : Math.min(1, Math.max(0, positionFromStart(face, point) / length));
  // On an arc a point beyond an end may be nearer to the other end than the clamped one.
  return Math.min(...[along, 0, 1].map((share) => distance(curvePoint(face, share), point)));
}
