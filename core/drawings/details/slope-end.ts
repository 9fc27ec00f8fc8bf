/** A rail of a ramp's fence where it meets what stops it, from the side: coped to its plumb post, or mitred where the slope breaks. */
import { PENS } from '../../drafting/kit.ts';
import { type Brief } from '../../brief/types.ts';
import { type Fence, type Ramp } from '../../layout/index.ts';
import { slopeCopeReach } from '../../parts/index.ts';
import { buttWeld, copedWeld } from '../../schedules/index.ts';
import { viewPoint } from '../../base/points.ts';
import { radians } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { straight } from '../gate-outline.ts';
import { weldAt, word } from './say-size.ts';

/** Null where nothing is cut to the slope: a lapped fence without a dock, or posts with corners. x up the ramp from the post, y up. */
export function slopeEnd(brief: Brief, ramp: Ramp, fence: Fence): Detail | null {
  return fence.brief.construction === 'lapped' ? slopeMitre(brief, ramp, fence) : slopeCope(brief, ramp, fence);
}

function slopeCope(brief: Brief, { figures: { slope }, name }: Ramp, fence: Fence): Detail | null {
  const { rail, post } = fence.brief;
  if (post.shape !== 'round' || rail.shape !== 'round' || rail.across >= post.across) return null;
  const [p, r] = [post.across / 2, rail.across / 2];
  const tan = Math.tan(slope);
  const half = r / Math.cos(slope);
  const long = 5 * p;
  const reach = slopeCopeReach(r, p, slope);
  const edge = (y0: number) => [-1, 1].map((way) => straight(PENS.outline, way * p, y0 + way * p * tan, way * long, y0 + way * long * tan));
  const tall = 2.2 * rail.across + p * tan;
  return {
    id: `slope cope ${name} ${fence.side}`,
    title: say('drawings.detail.slopeCope', { ramp: name, rail: rail.name, post: post.name }),
    bounds: boundsOf([{ x: -long, y: Math.min(-tall, -long * tan - half) }, { x: long, y: Math.max(tall, long * tan + half) }]),
    shapes: [
      ...[-p, p].map((x) => straight(PENS.outline, x, -tall, x, tall)),
      ...edge(half), ...edge(-half),
      straight(PENS.center, -long, -long * tan, long, long * tan),
      straight(PENS.center, 0, -tall - 1, 0, tall + 1),
    ],
    dimensions: (h) => [
      { measure: 'angle', required: true, center: viewPoint(0, 0), from: radians(slope), to: radians(Math.PI / 2), offsets: [10, 13, 16, 20, 26, 8, 32].map((by) => by * h) },
      // Along the axis from the post's center: where the cut is shortest, at the obtuse side.
      { measure: 'aligned', required: true, decimal: true, prefix: say('drawings.detail.shortPoint'), from: viewPoint(0, 0), to: viewPoint(reach.short * Math.cos(slope), reach.short * Math.sin(slope)), offsets: [-12, -9, -15, -19, -24, 9, 12, 16].map((by) => by * h) },
    ],
    callouts: [word('drawings.detail.railUp', [long * 0.8, long * 0.8 * tan], [0.4, 1]), word('drawings.detail.post', [0, -tall * 0.8], [0.7, -0.5])],
    welds: [weldAt(copedWeld(brief, rail, post), [-p, -p * tan + half], [-1, 0.8])],
  };
}

function slopeMitre(brief: Brief, { figures: { slope, dockLength }, name }: Ramp, fence: Fence): Detail | null {
  if (dockLength <= 0 || !fence.spans.some(({ end }) => end.kind === 'joint')) return null;
  const { rail } = fence.brief;
  const r = rail.along / 2;
  const long = 5 * r;
  const tan = Math.tan(slope);
  // The two edges meet on the line that halves the break.
  const corner = r * Math.tan(slope / 2);
  const lines = [1, -1].flatMap((way) => {
    const x = -way * corner;
    const y = way * r;
    return [straight(PENS.outline, x, y, long, y), straight(PENS.outline, x, y, -long, y - (long + x) * tan)];
  });
  return {
    id: `slope mitre ${name} ${fence.side}`,
    title: say('drawings.detail.slopeMitre', { ramp: name, rail: rail.name }),
    bounds: boundsOf([{ x: -long, y: -long * tan - r }, { x: long, y: r }]),
    shapes: [...lines, straight(PENS.outline, -corner, r, corner, -r), straight(PENS.center, 0, 0, long, 0), straight(PENS.center, 0, 0, -long, -long * tan)],
    dimensions: (h) => [
      { measure: 'angle', required: true, center: viewPoint(0, 0), from: radians(Math.PI + slope), to: radians(2 * Math.PI), offsets: [8, 11, 14, 18, 24, 6, 30].map((by) => by * h) },
    ],
    callouts: [
      word('drawings.corner.mitre', [0, 0], [0.2, -1], { angle: String(Math.round((slope * 90 * 100) / Math.PI) / 100) }),
      word('drawings.detail.dockRail', [long * 0.8, 0], [0.4, -1]), word('drawings.detail.slopeRail', [-long * 0.8, -long * 0.8 * tan], [-0.3, 1]),
    ],
    welds: [weldAt(buttWeld(brief, 'rail-mitre', rail.wall, brief.shop.weldGap, true), [-corner, r], [0.5, 1])],
  };
}
