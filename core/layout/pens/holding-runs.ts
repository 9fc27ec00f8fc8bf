/** The drive alley upstream of the alley, and the fences of the holding pens beside it, on the side away from the chute. */
import { signedAngle } from '../../base/angle.ts';
import { add, distance, leftOf, planPoint, scale, unitAt, type PlanPoint } from '../../base/points.ts';
import { inches } from '../../base/quantity.ts';
import { otherSide, type Brief, type FenceBrief, type HoldingPenBrief, type Side } from '../../brief/types.ts';
import { fenceSection } from '../fence-section.ts';
import { turnSign, type Pose } from '../pose.ts';
import { type HoldingPen, type Run } from '../types.ts';
import { otherPose, walkedRun } from '../walked-run.ts';

/** Clear space between two posts, inches (geometry contract). */
const CLEAR = 0.5;

/** The side of the drive alley that the pens are on. */
export const pensSide = (brief: Brief): Side => otherSide(brief.crowdPen.hand);

/** How far a fence reaches out from its face. */
const thickness = (fence: FenceBrief): number => {
  const { k, D } = fenceSection(fence);
  return k + D / 2;
};

/** From another fence's surface to the center of the first post of one that ends there. */
const endOff = ({ post }: FenceBrief): number => Math.max(post.across, post.along) / 2 + CLEAR;

/** The stretches of the drive alley, set out backward from where the alley starts; the pens with their fences; all in walking order. */
export function holdingRuns(brief: Brief, alley: Pose): { readonly runs: readonly Run[]; readonly pens: readonly HoldingPen[] } {
  const { holdingPens } = brief;
  const thick = thickness(brief.fences.pens[pensSide(brief)]);
  let pose = alley;
  const drives: Run[] = [];
  for (let i = holdingPens.length - 1; i >= 0; i--) {
    const { name, length } = holdingPens[i]!;
    // The first pen has a fence at either end, the others share the one before them.
    const run = walkedRun(name, { kind: 'straight', length: inches(length + (i === 0 ? 2 : 1) * thick) }, brief.crowdPen.radius, 'end', pose, null);
    drives.unshift(run);
    pose = otherPose(run, 'end');
  }
  const set = holdingPens.map((pen, i) => penBeside(brief, pen, drives[i]!, i === 0, holdingPens[i + 1] ?? null));
  return { runs: set.flatMap(({ runs }, i) => [drives[i]!, ...runs]), pens: set.map(({ pen }) => pen) };
}

/** One pen: its clear ground, and the fences that close it. `next`: the pen that shares its far end. */
function penBeside(brief: Brief, pen: HoldingPenBrief, drive: Run, first: boolean, next: HoldingPenBrief | null): { readonly pen: HoldingPen; readonly runs: readonly Run[] } {
  const side = pensSide(brief);
  const fence = brief.fences.pens[side];
  const thick = thickness(fence);
  if (drive.path.kind !== 'line') throw new Error(`a drive alley that is not straight: ${drive.name}`);
  const heading = drive.headings[0];
  const [along, out] = [unitAt(heading), scale(leftOf(unitAt(heading)), turnSign(side))];
  const origin = drive.path.a;
  /** `s` along the drive alley from the run's start, `v` outward from the alley's face. */
  const at = (s: number, v: number): PlanPoint => {
    const p = add(origin, add(scale(along, s), scale(out, drive.width / 2 + v)));
    return planPoint(p.x, p.y);
  };
  const from = first ? thick : 0;
  const to = from + pen.length;
  // Where the alley's own fence reaches out farther, its posts stand clear too.
  const near = Math.max(thick, thickness(brief.fences.alley[side]));
  const far = near + pen.width;
  const off = endOff(fence);
  const deep = near + Math.max(pen.width, next?.width ?? 0) + thick;
  const end = wall(`${pen.name}-end`, at(to, near + off), at(to, deep), otherSide(side));
  const start = wall(`${pen.name}-start`, at(from, near + off), at(from, far + thick), side);
  const back = wall(`${pen.name}-back`, at(from + off, far), at(to - off, far), side);
  const room = Math.min(GATE_FROM_END, Math.max(0, (pen.length - pen.gate) / 2));
  return {
    pen: {
      brief: pen, side, corners: [at(from, near), at(to, near), at(to, far), at(from, far)], middle: at((from + to) / 2, (near + far) / 2),
      gateAt: inches(to - room - pen.gate / 2),
    },
    runs: [...(first ? [start] : []), back, end],
  };
}

/** Clear of the far end of its pen a gate stands so far, where the pen is long enough (common practice, no source): cattle go out onward. */
export const GATE_FROM_END = 24;

/** A straight fence that is no part of the walk, named as a run with a face on one side. */
function wall(name: string, a: PlanPoint, b: PlanPoint, side: Side): Run {
  const face = { kind: 'line' as const, a, b };
  const heading = signedAngle(Math.atan2(b.y - a.y, b.x - a.x));
  return {
    name, kind: 'straight', from: null, length: inches(distance(a, b)), insideRadius: null, centerlineRadius: null, angle: null, hand: null,
    width: inches(0), path: face, headings: [heading, heading], faces: side === 'left' ? { left: face, right: null } : { left: null, right: face }, aside: true,
  };
}

/** The field behind the length of one of these fences: `hold-2-back` is the second pen's. */
export function holdingPath(brief: Brief, run: string): string {
  const pen = brief.holdingPens.find(({ name }) => run === name || run.startsWith(`${name}-`));
  if (pen === undefined) throw new Error(`no holding pen for ${run}`);
  return `${pen.path}.head`;
}

export const isHolding = (run: string): boolean => run.startsWith('hold-');

/** Area of a pen's clear ground, square inches. */
export const penArea = ({ brief: { length, width } }: HoldingPen): number => length * width;
