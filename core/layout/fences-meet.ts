import { carrierOf, carriersMeet } from '../base/carrier.ts';
import { curveLength, type Curve } from '../base/curve.ts';
import { positionFromStart } from '../base/position.ts';
import { type PlanPoint, type Vec } from '../base/points.ts';
import { inches, radians, type Inches } from '../base/quantity.ts';
import { type FenceLine } from './fence-line.ts';
import { faceCurve, radiusAtOffset } from './fence-points.ts';

/** Where two fences' lines meet: the position along each one's face. */
export interface Meeting {
  readonly upstream: Inches;
  readonly downstream: Inches;
}

/**
 * Where a line beside the end of one fence meets a line beside the start of the next, both carried on as lines or arcs as they are;
 * of two such places the one nearer to the end and the start. Null where they never meet.
 */
export function fencesMeet(upstream: FenceLine, upstreamOffset: number, downstream: FenceLine, downstreamOffset: number): Meeting | null {
  const a = faceCurve(upstream, 0, upstream.length, upstreamOffset);
  const b = faceCurve(downstream, 0, downstream.length, downstreamOffset);
  let best: Meeting | null = null;
  let bestAway = Infinity;
  for (const point of carriersMeet(carrierOf(a), carrierOf(b))) {
    const up = nearEnd(a, point) * toFace(upstream, upstreamOffset);
    const down = positionFromStart(b, point) * toFace(downstream, downstreamOffset);
    const away = Math.abs(upstream.length - up) + Math.abs(down);
    if (away < bestAway) {
      best = { upstream: inches(up), downstream: inches(down) };
      bestAway = away;
    }
  }
  return best;
}

/** How far along a curve from its start a point lies; on an arc by the nearer way round from its end, so that one past it is longer. */
function nearEnd(curve: Curve<PlanPoint>, point: Vec): number {
  if (curve.kind === 'line') return positionFromStart(curve, point);
  const back = { ...curve, start: radians(curve.start + curve.sweep), sweep: radians(-curve.sweep) };
  return curveLength(curve) - positionFromStart(back, point);
}

function toFace(line: FenceLine, offset: number): number {
  const radius = radiusAtOffset(line, offset);
  return radius === null || line.faceRadius === null ? 1 : line.faceRadius / radius;
}
