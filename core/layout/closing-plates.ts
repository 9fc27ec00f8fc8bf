import { add, distance, scale, sub, type PlanPoint } from '../base/points.ts';
import { inches, type Inches } from '../base/quantity.ts';
import { type Section } from '../steel/types.ts';
import { type Brief } from '../brief/types.ts';
import { facePoint, headingAt } from './fence-points.ts';
import { type ClosingPlate, type Fence } from './types.ts';

const THICKNESS = inches(0.25);
/** A gap that leaves less than this of plate is left open. */
const LEAST_WIDTH = 0.5;

/** The two plates that close the gaps beside the pivot post, along the alley's and the funnel's face (geometry contract, At P). */
export function closingPlates(brief: Brief, alley: Fence, funnel: Fence): readonly ClosingPlate[] {
  return [plateBeside(brief, alley, 'end'), plateBeside(brief, funnel, 'start')].filter((plate) => plate !== null);
}

function plateBeside(brief: Brief, fence: Fence, at: 'start' | 'end'): ClosingPlate | null {
  const span = at === 'start' ? fence.spans[0]! : fence.spans[fence.spans.length - 1]!;
  const post = at === 'start' ? span.posts[0]! : span.posts[span.posts.length - 1]!;
  const towardPost = headingAt(fence, at === 'start' ? 0 : fence.length) + (at === 'start' ? 0 : Math.PI);
  const reach = alongFace(fence, surfaceDistance(brief.crowdPen.pivotPost, towardPost));
  const from = facePoint(fence, at === 'start' ? reach : fence.length - reach, 0);
  const to = facePoint(fence, post, 0);
  const open = distance(from, to);
  const width = open - brief.shop.weldGap;
  const towardPivot = at === 'start' ? post <= reach : fence.length - post <= reach;
  if (towardPivot || width < LEAST_WIDTH) return null;
  const inset = scale(sub(to, from), brief.shop.weldGap / 2 / open);
  return {
    run: fence.run,
    side: fence.side,
    bay: at === 'start' ? span.firstBay : span.firstBay + span.posts.length - 2,
    a: add(from, inset) as PlanPoint,
    b: sub(to, inset) as PlanPoint,
    thickness: THICKNESS,
    width: inches(width),
    from: fence.brief.solidFrom,
    to: fence.brief.height,
  };
}

/** From a post's center to its surface in a direction; a rectangular pivot post stands square to the plan's axes. */
function surfaceDistance(post: Section, direction: number): Inches {
  if (post.shape === 'round') return inches(post.across / 2);
  const x = Math.abs(Math.cos(direction));
  const y = Math.abs(Math.sin(direction));
  return inches(Math.min(x > 0 ? post.across / 2 / x : Infinity, y > 0 ? post.along / 2 / y : Infinity));
}

/** The length of face that a chord of `reach` takes: on an arc a little longer than the chord. */
function alongFace(fence: Fence, reach: Inches): Inches {
  if (fence.faceRadius === null) return reach;
  return inches(2 * fence.faceRadius * Math.asin(Math.min(1, reach / (2 * fence.faceRadius))));
}
