import { signedAngle } from '../../base/angle.ts';
import { type Curve } from '../../base/curve.ts';
import { planPoint, type PlanPoint } from '../../base/points.ts';
import { type Inches } from '../../base/quantity.ts';
import { type Side } from '../../brief/types.ts';
import { turnSign, type Pose } from '../pose.ts';
import { type Run } from '../types.ts';
import { pointRun } from './point-run.ts';

/** Runs where the way grows wider or narrower at once: square fences join the faces of one run to those of the next. */
export const PAD_SHOULDER = 'pad-shoulder';
export const SORT_SHOULDER = 'sort-shoulder';

export const isShoulder = (run: string): boolean => run === PAD_SHOULDER || run === SORT_SHOULDER;

/** A run of no length at `pose`, from the clear width `before` to `after`; each side's face is square to the walk. */
export function shoulderRun(name: string, { at, heading }: Pose, before: Inches, after: Inches): Run {
  const beside = (side: Side, width: number): PlanPoint => {
    const away = (turnSign(side) * width) / 2;
    return planPoint(at.x - away * Math.sin(heading), at.y + away * Math.cos(heading));
  };
  const face = (side: Side): Curve<PlanPoint> => ({ kind: 'line', a: beside(side, before), b: beside(side, after) });
  return pointRun(name, at, signedAngle(heading), after, { left: face('left'), right: face('right') });
}
