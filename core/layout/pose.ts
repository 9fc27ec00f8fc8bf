/** Where the cattle stand and which way they look, at the end of a run. */
import { planPoint, type PlanPoint } from '../base/points.ts';
import { radians, type Radians } from '../base/quantity.ts';
import { type Side } from '../brief/types.ts';

export interface Pose {
  readonly at: PlanPoint;
  readonly heading: Radians;
}

/** +1 for left (counter-clockwise), -1 for right. */
export const turnSign = (hand: Side): 1 | -1 => (hand === 'left' ? 1 : -1);

/** A plan point of the hand-left layout, in the layout of the hand asked for (mirrored in the y axis for right). */
export const handedPoint = (hand: Side, x: number, y: number): PlanPoint => planPoint(hand === 'left' ? x : 0 - x, y);

/** A direction of the hand-left layout, in the layout of the hand asked for. */
export const handedAngle = (hand: Side, angle: number): Radians => radians(hand === 'left' ? angle : Math.PI - angle);
