import { boundsTouch, curveBounds, joinBounds, type Bounds } from '../../base/bounds.ts';
import { crossings } from '../../base/crossing.ts';
import { type Curve } from '../../base/curve.ts';
import { distance, type PlanPoint, type Vec } from '../../base/points.ts';
import { TAPE } from '../../base/tolerance.ts';
import { faceCurve, facePoint } from '../fence-points.ts';
import { type Fence } from '../types.ts';
import { type FoulList } from './foul-list.ts';
import { type Join } from './join.ts';

/** A fence as it takes up ground: its face, and the outline from there to the backs of its posts. */
interface Band {
  readonly fence: Fence;
  readonly face: Curve<PlanPoint>;
  readonly outline: readonly Curve<PlanPoint>[];
  readonly bounds: Bounds;
}

/** Tells of each pair of fences that cross or stand in one another, faces first; fences that join may touch where they join. */
export function fenceFouls(fences: readonly Fence[], joins: readonly Join[], fouls: FoulList): void {
  const bands = fences.map(bandOf);
  const joinOf = new Map(joins.map((join) => [pairKey(fences.indexOf(join.upstream), fences.indexOf(join.downstream)), join]));
  for (let i = 0; i < bands.length; i++) {
    for (let j = i + 1; j < bands.length; j++) {
      const a = bands[i]!;
      const b = bands[j]!;
      if (!boundsTouch(a.bounds, b.bounds)) continue;
      const join = joinOf.get(pairKey(i, j));
      const places = bandPlaces(a, b, join === undefined ? null : joinArea(join));
      fouls.add('foul-fence', [a.fence.run, b.fence.run], places);
    }
  }
}

const pairKey = (i: number, j: number): number => Math.min(i, j) * 1e6 + Math.max(i, j);

/** Every crossing of the two faces; where there is none but the fences stand in one another, one place of that. */
function bandPlaces(a: Band, b: Band, join: { at: Vec; radius: number } | null): readonly Vec[] {
  const apart = (p: Vec): boolean => join === null || distance(p, join.at) > join.radius;
  const faces = crossings(a.face, b.face).filter(apart);
  if (faces.length > 0) return faces;
  for (const curve of a.outline) {
    for (const other of b.outline) {
      const place = crossings(curve, other).find(apart);
      if (place !== undefined) return [place];
    }
  }
  return [];
}

/** Where two joined fences may touch: about the join, as far as their thickness at a corner reaches. */
function joinArea({ upstream, downstream }: Join): { at: Vec; radius: number } {
  const end = upstream.spans[upstream.spans.length - 1]!.posts.at(-1)!;
  const start = downstream.spans[0]!.posts[0]!;
  const thick = Math.max(thickness(upstream), thickness(downstream));
  return { at: facePoint(downstream, 0, 0), radius: 2 * thick + Math.abs(upstream.length - end) + Math.abs(start) + TAPE };
}

const thickness = (fence: Fence): number => fence.section.k + fence.section.D / 2;

function bandOf(fence: Fence): Band {
  const from = fence.spans[0]!.posts[0]!;
  const to = fence.spans[fence.spans.length - 1]!.posts.at(-1)!;
  const face = faceCurve(fence, from, to, 0);
  const back = thickness(fence);
  const edge = (u: number): Curve<PlanPoint> => ({ kind: 'line', a: facePoint(fence, u, 0), b: facePoint(fence, u, back) });
  const outline = [face, faceCurve(fence, from, to, back), edge(from), edge(to)];
  return { fence, face, outline, bounds: joinBounds(outline.map(curveBounds)) };
}
