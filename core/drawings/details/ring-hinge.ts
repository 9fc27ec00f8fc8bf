/** One of the crowd gate's ring hinges round the pivot post, from above. */
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { PENS } from '../../drafting/kit.ts';
import { type Shape } from '../../drafting/model.ts';
import { type Brief } from '../../brief/types.ts';
import { type CrowdGate } from '../../layout/index.ts';
import { hingeWeld } from '../../schedules/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { circle, rectangle, straight } from '../gate-outline.ts';
import { size, weldAt, word } from './say-size.ts';

/** x along the leaf from the pivot post's center. */
export function ringHinge(brief: Brief, gate: CrowdGate): Detail {
  const { ring, frame: name } = GATE_PRACTICE.crowdGate;
  const post = brief.crowdPen.pivotPost;
  const frame = gateSection(name);
  const r = Math.max(post.across, post.along) / 2;
  const outer = r + ring.thickness;
  const stile = gate.from + frame.across / 2;
  // The strap runs from the ring's back to the frame.
  const back = Math.sqrt(Math.max(0, outer ** 2 - (ring.thickness / 2) ** 2));
  const shapes: Shape[] = [
    ...(post.shape === 'round' ? [circle(PENS.outline, 0, 0, r)] : rectangle(PENS.outline, -post.across / 2, post.across / 2, -post.along / 2, post.along / 2)),
    circle(PENS.outline, 0, 0, outer),
    circle(PENS.outline, stile, 0, frame.across / 2),
    ...(gate.from > back ? [-1, 1].map((way) => straight(PENS.outline, back, (way * ring.thickness) / 2, gate.from, (way * ring.thickness) / 2)) : []),
    straight(PENS.center, -outer - 1, 0, stile + frame.across, 0),
  ];
  return {
    id: 'ring hinge',
    title: say('drawings.detail.ringHinge', { post: post.name }),
    bounds: boundsOf([{ x: -outer, y: -outer }, { x: stile + frame.across, y: outer }]),
    shapes,
    dimensions: (h) => [size(h, 'x', [0, 0], [gate.from, 0], -1), size(h, 'x', [-outer, 0], [-r, 0], 1)],
    callouts: [word('drawings.gate.ring', [-outer * 0.7, outer * 0.7], [-0.6, 1]), word('drawings.gate.stile', [stile, 0], [1, -0.7])],
    welds: [weldAt(hingeWeld(brief, 'ring-leaf', frame.wall), [gate.from, ring.thickness / 2], [0.6, 1])],
  };
}
