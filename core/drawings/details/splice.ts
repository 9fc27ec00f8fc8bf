/** Two lapped rails that meet end to end on a post, seen from above. */
import { PENS } from '../../drafting/kit.ts';
import { type Shape } from '../../drafting/model.ts';
import { type Brief } from '../../brief/types.ts';
import { type Fence } from '../../layout/index.ts';
import { buttWeld, lappedWeld } from '../../schedules/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { circle, rectangle, straight } from '../gate-outline.ts';
import { size, weldAt, word } from './say-size.ts';

/** x along the fence from the post, y outward from the face; the last row of rails is cut away past a hand's breadth. */
export function spliceDetail(brief: Brief, fence: Fence): Detail {
  const { k, kr, d, D, t } = fence.section;
  const { weldGap } = brief.shop;
  const half = Math.max(5, 1.2 * D);
  const { rail, post } = fence.brief;
  const at = weldGap / 2;
  const rails: Shape[] = [-1, 1].flatMap((way): Shape[] => [kr - d / 2, kr + d / 2].map((y) => straight(PENS.outline, way * at, y, way * half, y)));
  const ends = weldGap > 0 ? [-at, at] : [0];
  return {
    id: `splice ${fence.run} ${fence.side}`,
    title: say('drawings.detail.splice', { rail: rail.name, post: post.name }),
    bounds: boundsOf([{ x: -half, y: 0 }, { x: half, y: k + D / 2 }]),
    shapes: [
      ...rails,
      ...ends.map((x) => straight(PENS.outline, x, kr - d / 2, x, kr + d / 2)),
      ...(post.shape === 'round' ? [circle(PENS.outline, 0, k, D / 2)] : rectangle(PENS.outline, -post.along / 2, post.along / 2, k - D / 2, k + D / 2)),
      ...(t > 0 ? [straight(PENS.thin, -half, 0, half, 0), straight(PENS.thin, -half, t, half, t)] : []),
      straight(PENS.center, -half, kr, half, kr),
    ],
    dimensions: (h) => [
      ...(weldGap > 0 ? [size(h, 'x', [-at, kr - d / 2], [at, kr - d / 2], -1)] : []),
      size(h, 'y', [half, kr - d / 2], [half, kr + d / 2], 1),
      size(h, 'y', [-half, 0], [-half, k], -1, false),
    ],
    callouts: [word('drawings.detail.post', [D * 0.2, k], [0.6, 1]), word('drawings.section.cattle', [half * 0.7, 0], [0.4, -1])],
    welds: [
      weldAt(buttWeld(brief, 'rail-splice', rail.wall, weldGap, true), [-at, kr + d / 2], [-1, 0.6]),
      weldAt(lappedWeld(brief, rail, post), [Math.min(0.4, D / 6), kr + d / 2], [1, 0.6]),
    ],
  };
}
