import { type Arc } from '../../base/curve.ts';
import { type Vec } from '../../base/points.ts';
import { SAME_ANGLE } from '../../base/tolerance.ts';

/** How far round an arc (0 to 1) the direction of `point` from its center lies; null off the arc. An end within rounding counts. */
export function arcFraction(arc: Arc<Vec>, point: Vec): number | null {
  const full = 2 * Math.PI;
  const angle = Math.atan2(point.y - arc.center.y, point.x - arc.center.x);
  const sweep = Math.abs(arc.sweep);
  const turned = (((angle - arc.start) * Math.sign(arc.sweep)) % full + full) % full;
  if (turned <= sweep) return sweep === 0 ? 0 : turned / sweep;
  if (turned - sweep <= SAME_ANGLE) return 1;
  return full - turned <= SAME_ANGLE ? 0 : null;
}
