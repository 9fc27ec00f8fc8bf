import { curvePoint, type Curve } from '../../base/curve.ts';
import { angleOf, distance, sub, unitAt, type Vec } from '../../base/points.ts';
import { arcFraction } from './arc-fraction.ts';

/**
 * The points of a wall past which a sight line can just slip: where a line from the eye touches an arc, and the wall's ends (a
 * wall is smooth where its runs join, so an end matters only at a kink).
 */
export function grazes(eye: Vec, wall: Curve<Vec>): readonly Vec[] {
  const found: Vec[] = [curvePoint(wall, 0), curvePoint(wall, 1)];
  if (wall.kind === 'line') return found;
  const away = distance(wall.center, eye);
  if (away <= wall.radius) return found;
  const toEye = angleOf(sub(eye, wall.center));
  const half = Math.acos(wall.radius / away);
  for (const angle of [toEye - half, toEye + half]) {
    const u = unitAt(angle);
    const point = { x: wall.center.x + wall.radius * u.x, y: wall.center.y + wall.radius * u.y };
    if (arcFraction(wall, point) !== null) found.push(point);
  }
  return found;
}
