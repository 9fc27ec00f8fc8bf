import { signedAngle } from '../base/angle.ts';
import { type PlanPoint } from '../base/points.ts';
import { inches, radians, type Inches } from '../base/quantity.ts';
import { SAME_ANGLE } from '../base/tolerance.ts';
import { type Brief } from '../brief/types.ts';
import { handedAngle, handedPoint, turnSign, type Pose } from './pose.ts';
import { holdingRuns } from './pens/holding-runs.ts';
import { type HoldingPen, type Run } from './types.ts';
import { otherPose, walkedRun } from './walked-run.ts';
import { yardRuns } from './yard/yard-runs.ts';

export interface SetOut {
  /** In walking order. */
  readonly runs: readonly Run[];
  readonly holdingPens: readonly HoldingPen[];
  readonly mouth: PlanPoint;
  readonly mouthDistance: Inches;
  readonly funnelLength: Inches;
}

/** Sets out the path (geometry contract, Crowd pen, junction, chute): drive alley along the holding pens, alley, crowd pen, junction, chute and what follows it, in walking order. */
export function setOutRuns(brief: Brief): SetOut {
  const { radius, hand, funnelAngle } = brief.crowdPen;
  const { width } = brief.chute;
  const flat = Math.PI / 2 - funnelAngle < SAME_ANGLE;
  const mouthDistance = inches(flat ? 0 : (radius - width) / Math.tan(funnelAngle));
  const mouth = handedPoint(hand, radius - width / 2, mouthDistance);
  const alley = alleyRuns(brief);
  const held = holdingRuns(brief, otherPose(alley[0]!, 'end'));
  const chute = chuteRuns(brief, { at: mouth, heading: handedAngle(hand, Math.PI / 2) });
  return {
    runs: [
      ...held.runs,
      ...alley,
      crowdPenRun(brief),
      junctionRun(brief, mouthDistance),
      ...chute,
      ...yardRuns(brief, otherPose(chute[chute.length - 1]!, 'start')),
    ],
    holdingPens: held.pens,
    mouth,
    mouthDistance,
    funnelLength: inches((radius - width) / Math.sin(funnelAngle)),
  };
}

/** The alley is known at its end, the entry of the crowd pen, and so is set out backward. */
function alleyRuns(brief: Brief): readonly Run[] {
  const { radius, sweep, hand } = brief.crowdPen;
  const entry = handedPoint(hand, (radius / 2) * Math.cos(sweep), (-radius / 2) * Math.sin(sweep));
  let pose: Pose = { at: entry, heading: handedAngle(hand, Math.PI / 2 - sweep) };
  const runs: Run[] = [];
  for (let i = brief.alley.runs.length - 1; i >= 0; i--) {
    const run = walkedRun(`alley-${String(i + 1)}`, brief.alley.runs[i]!, radius, 'end', pose, null);
    runs.unshift(run);
    pose = otherPose(run, 'end');
  }
  return runs;
}

function crowdPenRun(brief: Brief): Run {
  const { radius, sweep, hand } = brief.crowdPen;
  const turn = turnSign(hand);
  const path = {
    kind: 'arc' as const,
    center: handedPoint(hand, 0, 0),
    radius,
    start: handedAngle(hand, -sweep),
    sweep: radians(turn * sweep),
  };
  return {
    name: 'crowd-pen',
    kind: 'arc',
    from: null,
    length: inches(radius * sweep),
    insideRadius: radius,
    centerlineRadius: null,
    angle: sweep,
    hand,
    width: radius,
    path,
    headings: [signedAngle(handedAngle(hand, Math.PI / 2 - sweep)), signedAngle(handedAngle(hand, Math.PI / 2))],
    faces: hand === 'left' ? { left: null, right: path } : { left: path, right: null },
  };
}

function junctionRun(brief: Brief, mouthDistance: Inches): Run {
  const { radius, hand } = brief.crowdPen;
  const { width } = brief.chute;
  const heading = signedAngle(handedAngle(hand, Math.PI / 2));
  const outer = { kind: 'line' as const, a: handedPoint(hand, radius, 0), b: handedPoint(hand, radius, mouthDistance) };
  const funnel = { kind: 'line' as const, a: handedPoint(hand, 0, 0), b: handedPoint(hand, radius - width, mouthDistance) };
  const outerFace = mouthDistance === 0 ? null : outer;
  return {
    name: 'junction',
    kind: 'straight',
    from: null,
    length: mouthDistance,
    insideRadius: null,
    centerlineRadius: null,
    angle: null,
    hand: null,
    width,
    path: outer,
    headings: [heading, heading],
    faces: hand === 'left' ? { left: funnel, right: outerFace } : { left: outerFace, right: funnel },
  };
}

function chuteRuns(brief: Brief, mouth: Pose): readonly Run[] {
  let pose = mouth;
  let station = 0;
  return brief.chute.runs.map((runBrief, i) => {
    const run = walkedRun(`chute-${String(i + 1)}`, runBrief, brief.chute.width, 'start', pose, inches(station));
    pose = otherPose(run, 'start');
    station += run.length;
    return run;
  });
}
