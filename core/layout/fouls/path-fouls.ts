import { boundsTouch, curveBounds, type Bounds } from '../../base/bounds.ts';
import { crossings } from '../../base/crossing.ts';
import { curvePoint, type Curve } from '../../base/curve.ts';
import { offsetCurve } from '../../base/offset.ts';
import { distance, type Vec } from '../../base/points.ts';
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
  const chuteWidth = runs.findLast((run) => run.from !== null)?.width ?? 0;
  const path = runs.filter((run) => !run.aside).map((run) => walked(run, chuteWidth)).filter((part) => part !== null);
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
 * What the cattle walk along: the centerline; in the crowd pen and the junction, whose `path` is their outer face, half a chute's
 * width inside it, which goes on in the chute's centerline.
 */
function walked(run: Run, chuteWidth: number): Walked | null {
  if (run.length < SAME_LENGTH) return null;
  const followsFace = run.name === 'crowd-pen' || run.name === 'junction';
  // The face that is followed is the right one where the pen turns left.
  const inward = run.faces.left === run.path ? -chuteWidth / 2 : chuteWidth / 2;
  const curve = followsFace ? offsetCurve(run.path, inward) : run.path;
  return { name: run.name, curve, bounds: curveBounds(curve) };
}
