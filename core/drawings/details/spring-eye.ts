/** The spring that shuts a man gate, from the front: an eye on the jamb post and one on the leaf's stile. */
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { type Brief } from '../../brief/types.ts';
import { PENS } from '../../drafting/kit.ts';
import { type Fence } from '../../layout/index.ts';
import { eyeWeld, hingeWeld } from '../../schedules/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { circle, rectangle, straight } from '../gate-outline.ts';
import { size, weldAt, word } from './say-size.ts';

const EYE = 0.5;

/** x from the hinges' pin along the leaf, y from the lower hinge's middle. */
export function springDetail(brief: Brief, fence: Fence, mark: string): Detail {
  const { hinge, manGate } = GATE_PRACTICE;
  const frame = gateSection(manGate.frame);
  const post = fence.brief.post.along;
  const barrel = hinge.barrel / 2;
  const half = hinge.length / 2;
  const up = half + 4;
  const top = up + 3;
  const jamb = -barrel - post / 2;
  const stile = barrel + frame.across / 2;
  return {
    id: `spring ${fence.run} ${fence.side}`,
    title: say('drawings.detail.spring', { mark }),
    bounds: boundsOf([{ x: -barrel - post, y: -half - 2 }, { x: barrel + frame.across + 4, y: top }]),
    shapes: [
      ...[-barrel - post, -barrel].map((x) => straight(PENS.outline, x, -half - 2, x, top)),
      ...[barrel, barrel + frame.across].map((x) => straight(PENS.outline, x, -half - 2, x, top)),
      ...rectangle(PENS.outline, -barrel, barrel, -half, half),
      straight(PENS.center, 0, -half - 1, 0, half + 1),
      circle(PENS.outline, jamb, up, EYE), circle(PENS.outline, stile, up, EYE),
      straight(PENS.center, jamb, up, stile, up),
    ],
    dimensions: (h) => [
      size(h, 'y', [barrel, -half], [barrel, half], 1),
      size(h, 'x', [-barrel, -half], [barrel, -half], -1),
    ],
    callouts: [word('drawings.gate.jamb', [jamb, -half - 1], [-1, -0.4]), word('drawings.gate.spring', [(jamb + stile) / 2, up], [0.2, 1]), word('drawings.gate.stile', [stile, -half - 1], [1, -0.5])],
    welds: [
      weldAt(hingeWeld(brief, 'hinge-jamb', fence.brief.post.wall), [-barrel, half * 0.6], [-1, 0.6]),
      weldAt(hingeWeld(brief, 'hinge-leaf', frame.wall), [barrel, half * 0.6], [1, -0.5]),
      weldAt(eyeWeld(brief, frame.wall), [stile + EYE, up], [1, 0.7]),
    ],
  };
}
