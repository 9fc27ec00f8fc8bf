import { boundsTouch, curveBounds, type Bounds } from '../../base/bounds.ts';
import { crossings } from '../../base/crossing.ts';
import { curveLength, curvePoint, type Curve } from '../../base/curve.ts';
import { distance, planPoint, type Vec } from '../../base/points.ts';
import { inches } from '../../base/quantity.ts';
import { SAME_LENGTH, TAPE } from '../../base/tolerance.ts';
import { type Fence, type Run } from '../types.ts';
import { type FoulList } from './foul-list.ts';

interface Walked {
  readonly name: string;
  readonly curve: Curve<Vec>;
  readonly bounds: Bounds;
}

/** Tells of each place where the path crosses itself or a fence. */
export function pathFouls(runs: readonly Run[], fences: readonly Fence[], fouls: FoulList): void {
  const path = runs.map((run, i) => walked(run, runs[i + 1])).filter((part) => part !== null);
  const faces = fences.map((fence) => ({ name: fence.run, curve: fence.face, bounds: curveBounds(fence.face) }));
  const order = new Map(runs.map((run, i) => [run.name, i]));
  const inOrder = (a: string, b: string): [string, string] => (order.get(a)! <= order.get(b)! ? [a, b] : [b, a]);
  path.forEach((part, i) => {
    for (const other of path.slice(i + 1)) {
      if (!boundsTouch(part.bounds, other.bounds)) continue;
      const join = other === path[i + 1] ? curvePoint(part.curve, 1) : null;
      const places = crossings(part.curve, other.curve).filter((p) => join === null || distance(p, join) > TAPE);
      fouls.add('foul-path', [part.name, other.name], places);
    }
    for (const face of faces) {
      if (!boundsTouch(part.bounds, face.bounds)) continue;
      fouls.add('foul-path', inOrder(part.name, face.name), crossings(part.curve, face.curve));
    }
  });
}

/**
 * The middle of what the cattle walk along: the centerline; in the crowd pen and the junction, whose `path` is their outer face, a line
 * between their two sides that goes on in the neighboring runs' centerlines.
 */
function walked(run: Run, next: Run | undefined): Walked | null {
  let curve: Curve<Vec> = run.path;
  if (run.name === 'crowd-pen' && run.path.kind === 'arc') curve = { ...run.path, radius: inches(run.path.radius / 2) };
  if (run.name === 'junction' && run.path.kind === 'line' && next !== undefined) {
    curve = { kind: 'line', a: planPoint(run.path.a.x / 2, run.path.a.y / 2), b: curvePoint(next.path, 0) };
  }
  const short = curveLength(run.path) < SAME_LENGTH;
  return short ? null : { name: run.name, curve, bounds: curveBounds(curve) };
}
