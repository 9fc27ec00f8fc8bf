/** How far apart the posts of a fence stand: each stretch of equal bays is measured once, on the bay in its middle. */
import { facePoint, type Fence } from '../../layout/index.ts';
import { type DimensionSpec } from '../../drafting/model.ts';
import { say } from '../../text/index.ts';
import { type Turn } from '../bounds.ts';

/** From post center to post center along a straight fence, on the side away from the cattle. */
export function baySizes(fence: Fence, turn: Turn, required: boolean, h: number): readonly DimensionSpec[] {
  if (fence.faceRadius !== null) return [];
  return fence.spans.filter(({ posts }) => posts.length > 1).map(({ posts }): DimensionSpec => {
    const bays = posts.length - 1;
    const first = Math.floor((bays - 1) / 2);
    const [from, to] = [posts[first]!, posts[first + 1]!].map((u) => turn.point(facePoint(fence, u, fence.section.k)));
    return {
      measure: 'aligned', required, from: from!, to: to!, offsets: [3, 5, 8, -3, -5].map((reach) => fence.outward * reach * h),
      ...(bays > 1 ? { prefix: say('drawings.holding.bays', { count: String(bays) }) } : {}),
    };
  });
}
