/** Places on a ramp in plan. */
import { planPoint, unitAt, type PlanPoint } from '../base/points.ts';
import { type Ramp } from '../layout/index.ts';

/** The way up the ramp: of an unloading one, against the walk. */
export const upOf = ({ brief, heading }: Ramp): number => (brief.kind === 'load' ? heading : heading + Math.PI);

/** A place so far up the ramp from its low end, and so far to the left of its middle, seen going up. */
export function rampPoint(ramp: Ramp, up: number, across: number): PlanPoint {
  const [along, left] = [unitAt(upOf(ramp)), unitAt(upOf(ramp) + Math.PI / 2)];
  return planPoint(ramp.at.x + along.x * up + left.x * across, ramp.at.y + along.y * up + left.y * across);
}
