/** The return alley: run by run from behind the fence that its gate is in. */
import { radians } from '../../base/quantity.ts';
import { hingePostOf } from '../../brief/gate-steel.ts';
import { returnGate } from '../../brief/holding-gate.ts';
import { type Brief, type ReturnAlleyBrief } from '../../brief/types.ts';
import { facePoint, headingAt } from '../fence-points.ts';
import { jambOffset } from '../openings/cuts.ts';
import { type Spot } from '../openings/spots.ts';
import { runSides, type FenceLine } from '../run-sides.ts';
import { type Pose } from '../pose.ts';
import { type Run } from '../types.ts';
import { otherPose, walkedRun } from '../walked-run.ts';

/** Clear space between two posts, inches (geometry contract). */
const CLEAR = 0.5;

export interface ReturnWay {
  readonly runs: readonly Run[];
  readonly lines: readonly FenceLine[];
}

/** Its first posts stand clear of the backs of the posts of the fence that it leaves; it sets out square to that fence. */
export function returnWay(brief: Brief, way: ReturnAlleyBrief, gate: Spot): ReturnWay {
  const { line, u } = gate.places[0]!;
  const own = brief.fences.pens;
  // The gate may hang on a thicker post than the others.
  const hinge = hingePostOf(line.brief, returnGate(way));
  const off = Math.max(...(['left', 'right'] as const).map((side) => Math.max(own[side].post.across, own[side].post.along))) / 2 + CLEAR;
  let pose: Pose = {
    at: facePoint(line, u, Math.max(line.section.k + line.section.D / 2, jambOffset(line, hinge) + hinge.across / 2) + off),
    heading: radians(headingAt(line, u) + (line.outward * Math.PI) / 2),
  };
  const runs: Run[] = [];
  const lines: FenceLine[] = [];
  way.runs.forEach((said, i) => {
    const run = walkedRun(`return-${String(i + 1)}`, said, way.width, 'start', pose, null);
    pose = otherPose(run, 'start');
    runs.push(run);
    lines.push(...runSides(run, (side) => own[side], `returnAlley.runs[${String(i)}].${said.kind === 'straight' ? 'length' : 'angle'}`));
  });
  return { runs, lines };
}
