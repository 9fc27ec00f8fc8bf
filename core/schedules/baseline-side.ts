import { cross, distance, sub, type Vec } from '../base/points.ts';
import { TAPE } from '../base/tolerance.ts';

export type BaselineSide = 'left' | 'right' | 'on';

/** On which side of the line from A to B a point lies, looking from A to B; `on` within 1/16 in of the line, carried on past its ends. */
export function baselineSide(point: Vec, a: Vec, b: Vec): BaselineSide {
  const baseline = sub(b, a);
  const off = cross(baseline, sub(point, a));
  if (Math.abs(off) <= TAPE * distance(a, b)) return 'on';
  return off > 0 ? 'left' : 'right';
}
