import { signedAngle } from '../base/angle.ts';
import { curveHeading, curvePoint, type Curve } from '../base/curve.ts';
import { offsetCurve } from '../base/offset.ts';
import { planPoint, type PlanPoint } from '../base/points.ts';
import { inches, radians, type Inches } from '../base/quantity.ts';
import { type RunBrief, type Side } from '../brief/types.ts';
import { turnSign, type Pose } from './pose.ts';
import { type Run } from './types.ts';

/** From which end a run is set out: an alley's known end is its last, the chute's its first. */
export type KnownEnd = 'start' | 'end';

/**
 * One run of an alley or a chute, set out from the pose at one of its ends: its centerline and its two faces.
 * `from` is the station of its start, null off the chute.
 */
export function walkedRun(name: string, brief: RunBrief, width: Inches, known: KnownEnd, pose: Pose, from: Inches | null): Run {
  const path = brief.kind === 'straight' ? straightPath(brief.length, known, pose) : arcPath(brief, width, known, pose);
  const arc = brief.kind === 'arc' ? brief : null;
  return {
    name,
    kind: brief.kind,
    from,
    // From the brief, not from the points: an even length stays even.
    length: inches(brief.kind === 'straight' ? brief.length : (brief.insideRadius + width / 2) * brief.angle),
    insideRadius: arc ? arc.insideRadius : null,
    centerlineRadius: arc ? inches(arc.insideRadius + width / 2) : null,
    angle: arc ? arc.angle : null,
    hand: arc ? arc.hand : null,
    width,
    path,
    headings: [signedAngle(curveHeading(path, 0)), signedAngle(curveHeading(path, 1))],
    faces: { left: facePath(brief, path, width, 'left'), right: facePath(brief, path, width, 'right') },
  };
}

/** The pose at the end of a run that is not yet known. */
export function otherPose(run: Run, known: KnownEnd): Pose {
  const fraction = known === 'start' ? 1 : 0;
  return { at: curvePoint(run.path, fraction), heading: curveHeading(run.path, fraction) };
}

function straightPath(length: Inches, known: KnownEnd, pose: Pose): Curve<PlanPoint> {
  const step = known === 'start' ? length : -length;
  const other = planPoint(pose.at.x + step * Math.cos(pose.heading), pose.at.y + step * Math.sin(pose.heading));
  return known === 'start' ? { kind: 'line', a: pose.at, b: other } : { kind: 'line', a: other, b: pose.at };
}

function arcPath(brief: Extract<RunBrief, { kind: 'arc' }>, width: Inches, known: KnownEnd, pose: Pose): Curve<PlanPoint> {
  const turn = turnSign(brief.hand);
  const radius = brief.insideRadius + width / 2;
  // The center lies a radius to the side that the cattle turn to; seen from it they stand a quarter turn behind their heading.
  const seen = pose.heading - (turn * Math.PI) / 2;
  const center = planPoint(pose.at.x - radius * Math.cos(seen), pose.at.y - radius * Math.sin(seen));
  const start = known === 'start' ? seen : seen - turn * brief.angle;
  return { kind: 'arc', center, radius: inches(radius), start: radians(start), sweep: radians(turn * brief.angle) };
}

/** On an arc the side that it turns to is the inner wall, at the inside radius; the other is a width farther out. */
function facePath(brief: RunBrief, path: Curve<PlanPoint>, width: Inches, side: Side): Curve<PlanPoint> {
  if (brief.kind === 'straight' || path.kind === 'line') return offsetCurve(path, (turnSign(side) * width) / 2);
  return { ...path, radius: inches(side === brief.hand ? brief.insideRadius : brief.insideRadius + width) };
}
