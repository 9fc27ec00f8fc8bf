import { curveBounds, joinBounds, pointBounds } from '../../base/bounds.ts';
import { inches } from '../../base/quantity.ts';
import { type Brief } from '../../brief/types.ts';
import { fenceSection } from '../fence-section.ts';
import { faceCurve } from '../fence-points.ts';
import { type Fence, type Post, type Ramp } from '../types.ts';
import { placeRamps } from './place-ramps.ts';
import { rampFences, rampPosts } from './ramp-fences.ts';

/** The ramps of a brief with their fences and posts, all in walking order. */
export interface SetOutRamps {
  readonly ramps: readonly Ramp[];
  readonly fences: readonly Fence[];
  readonly posts: readonly Post[];
}

/** Sets out the ramps beside what stands already. */
export function setOutRamps(brief: Brief, fences: readonly Fence[], posts: readonly Post[]): SetOutRamps {
  const { hand } = brief.crowdPen;
  const reach = brief.footings.diameter / 2;
  const { b, c } = brief.control;
  const taken = joinBounds([
    ...fences.map((fence) => curveBounds(faceCurve(fence, 0, fence.length, 0))),
    ...posts.map(({ at }) => pointBounds([{ x: at.x - reach, y: at.y - reach }, { x: at.x + reach, y: at.y + reach }])),
    pointBounds(c === null ? [b] : [b, c]),
  ]);
  const sections = [fenceSection(brief.fences.ramp.left), fenceSection(brief.fences.ramp.right)];
  const depth = inches(Math.max(...sections.map(({ k, D }) => k + Math.max(reach, D / 2))));
  const ramps = placeRamps(brief.ramps, { taken, hand, depth });
  const own = ramps.flatMap((ramp) => rampFences(brief, ramp).map((fence) => ({ ramp, fence })));
  return { ramps, fences: own.map(({ fence }) => fence), posts: own.flatMap(({ ramp, fence }) => rampPosts(brief, ramp, fence)) };
}
