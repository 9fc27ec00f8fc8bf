import { curvePoint } from '../base/curve.ts';
import { distance, type PlanPoint } from '../base/points.ts';
import { inches, type Inches } from '../base/quantity.ts';
import { type Side } from '../brief/types.ts';
import { type Fence, type Layout } from '../layout/index.ts';
import { say } from '../text/index.ts';
import { nearestOnCurve } from './nearest-on-curve.ts';

/** A place on a fence's face: how far along it, from the run's start. */
export interface OnFace {
  readonly run: string;
  readonly side: Side;
  readonly along: Inches;
}

/** Something that is worth measuring from. */
export interface Snap {
  readonly kind: 'pivot' | 'mouth' | 'post' | 'face-end' | 'face';
  readonly at: PlanPoint;
  /** What a person calls it. */
  readonly label: string;
  /** The faces that it lies on, or beside where it is a post. */
  readonly on: readonly OnFace[];
}

/**
 * The thing to measure from that is nearest to a plan point, no farther than `reach` inches: a post's center, the end of a face, the pivot
 * post or the middle of the mouth before any place between them on a face. Null where there is none.
 */
export function snap(layout: Layout, point: PlanPoint, reach: number): Snap | null {
  return nearestOf(pointsOf(layout), point, reach) ?? nearestOf(layout.fences.map((fence) => onFace(fence, point)), point, reach);
}

function nearestOf(snaps: readonly Snap[], point: PlanPoint, reach: number): Snap | null {
  let best: Snap | null = null;
  let least = reach;
  for (const one of snaps) {
    const away = distance(one.at, point);
    if (away > least || (best !== null && away === least)) continue;
    best = one;
    least = away;
  }
  return best;
}

function pointsOf(layout: Layout): readonly Snap[] {
  return [
    { kind: 'pivot', at: layout.pivot, label: say('board.snap.pivot'), on: [] },
    { kind: 'mouth', at: layout.mouth, label: say('board.snap.mouth'), on: [] },
    ...layout.posts.filter((post) => post.kind !== 'pivot-post').map((post): Snap => ({
      kind: 'post', at: post.at, label: say('board.snap.post', words(post)),
      on: [{ run: post.run, side: post.side, along: post.u }, ...(post.alsoEnds === null ? [] : [{ run: post.alsoEnds.run, side: post.alsoEnds.side, along: post.alsoEnds.u }])],
    })),
    ...layout.fences.flatMap((fence) => ([0, 1] as const).map((end): Snap => ({
      kind: 'face-end', at: curvePoint(fence.face, end), label: say(end === 0 ? 'board.snap.faceStart' : 'board.snap.faceEnd', words(fence)),
      on: [{ run: fence.run, side: fence.side, along: inches(end * fence.length) }],
    }))),
  ];
}

function onFace(fence: Fence, point: PlanPoint): Snap {
  const { at, fraction } = nearestOnCurve(fence.face, point);
  return { kind: 'face', at, label: say('board.snap.face', words(fence)), on: [{ run: fence.run, side: fence.side, along: inches(fraction * fence.length) }] };
}

const words = ({ run, side }: { readonly run: string; readonly side: Side }): { run: string; side: string } => ({ run, side: say(`drawings.side.${side}`) });
