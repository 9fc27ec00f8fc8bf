import { curveHeading, curvePoint } from '../../base/curve.ts';
import { leftOf, planPoint, type PlanPoint, unitAt } from '../../base/points.ts';
import { type Catwalk, type Run } from '../../layout/index.ts';
import { type HighPoint, isSeen } from './line-of-sight.ts';
import { type SolidWall } from './solid-walls.ts';

/** Somebody who stands: where, and the height of what is stood on. */
export interface Person {
  readonly at: PlanPoint;
  readonly floor: number;
}

/** Heights of a standing person that are looked for: head, chest and hip, inches over what is stood on (66 in tall; from memory, no source). */
const HEIGHTS = [66, 48, 30] as const;

/** Whether any of a person is seen by any of the eyes. */
export const personSeen = ({ at, floor }: Person, eyes: readonly HighPoint[], walls: readonly SolidWall[]): boolean =>
  eyes.some((eye) => HEIGHTS.some((height) => isSeen(eye, { at, height: floor + height }, walls)));

/** Shares of the pad's length at which the crew stand, on both sides. */
const ALONG = [0.1, 0.3, 0.5, 0.7, 0.9] as const;

/** The crew at the squeeze pad: along both sides, half way between the line of the chute's face and the pad's own. The squeeze itself hides nobody. */
export function padCrew(pad: Run, chuteWidth: number): readonly Person[] {
  const out = (chuteWidth + pad.width) / 4;
  return ALONG.flatMap((share) => [out, -out].map((offset): Person => {
    const middle = curvePoint(pad.path, share);
    const left = leftOf(unitAt(curveHeading(pad.path, share)));
    return { at: planPoint(middle.x + left.x * offset, middle.y + left.y * offset), floor: 0 };
  }));
}

/** Somebody on every part of a catwalk's deck, in its middle. */
export const deckPeople = (catwalk: Catwalk): readonly Person[] => catwalk.stretches.flatMap(({ parts }) => parts.map(({ corners, heights }): Person => ({
  at: planPoint(corners.reduce((sum, { x }) => sum + x, 0) / corners.length, corners.reduce((sum, { y }) => sum + y, 0) / corners.length),
  floor: (heights[0] + heights[1]) / 2,
})));

/** Eyes along the chute's centerline, a body length or more apart and at most `most` of them; none in the last body length before its end. */
export function chuteEyes(chute: readonly Run[], bodyLength: number, height: number, most: number): readonly HighPoint[] {
  const total = chute.reduce((sum, run) => sum + run.length, 0);
  const last = Math.max(0, total - bodyLength);
  const count = Math.min(most, Math.floor(last / bodyLength) + 1);
  return Array.from({ length: count }, (_, i): HighPoint => {
    const station = count === 1 ? 0 : (last * i) / (count - 1);
    const run = chute.findLast((one) => (one.from ?? 0) <= station) ?? chute[0]!;
    return { at: curvePoint(run.path, (station - (run.from ?? 0)) / run.length), height };
  });
}
