/** The upper corner of a backstop's frame, as the cattle come to it: upright on its post, beam over it, a guide beside the leaf. */
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { type Brief } from '../../brief/types.ts';
import { inches } from '../../base/quantity.ts';
import { PENS } from '../../drafting/kit.ts';
import { type Shape } from '../../drafting/model.ts';
import { type Backstop, type Fence } from '../../layout/index.ts';
import { beamHeight } from '../../parts/index.ts';
import { buttWeld, roundEndWeld } from '../../schedules/index.ts';
import { say } from '../../text/index.ts';
import { printLength } from '../../units/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { rectangle, straight } from '../gate-outline.ts';
import { size, weldAt, word } from './say-size.ts';

/** How much of upright and leaf is drawn below the beam, inches. */
const BELOW = 8;

/** The left side; x from its face, y from the beam's underside. */
export function backstopFrame(brief: Brief, gate: Backstop, mark: string, fence: Fence): Detail {
  const { sideGap, beam: beamName, guide: guideName, frame: frameName } = GATE_PRACTICE.backstop;
  const [beam, guide, frame] = [gateSection(beamName), gateSection(guideName), gateSection(frameName)];
  const { post } = fence.brief;
  const axis = -fence.section.k;
  const half = post.across / 2;
  const top = beam.across;
  const right = sideGap + frame.across + 4;
  const shapes: Shape[] = [
    ...[-half, half].map((x) => straight(PENS.outline, axis + x, -BELOW, axis + x, 0)),
    straight(PENS.outline, axis - half, 0, axis - half, top),
    ...[0, top].map((y) => straight(PENS.outline, axis - half, y, right, y)),
    ...[0, guide.across].map((x) => straight(PENS.outline, x, -BELOW, x, 0)),
    ...rectangle(PENS.hidden, sideGap, sideGap + frame.across, -BELOW, -2),
    straight(PENS.center, axis, -BELOW - 1, axis, top + 1),
  ];
  return {
    id: `backstop frame ${gate.path}`,
    title: say('drawings.detail.backstop', { mark, beam: beam.name }),
    bounds: boundsOf([{ x: axis - half, y: -BELOW }, { x: right, y: top }]),
    shapes,
    dimensions: (h) => [
      size(h, 'x', [axis, top], [0, top], 1),
      size(h, 'x', [0, -BELOW], [sideGap, -BELOW], -1),
    ],
    callouts: [
      word('drawings.detail.guide', [guide.across / 2, -BELOW * 0.7], [-1, -0.6], { guide: guide.name }), word('drawings.detail.leaf', [sideGap + frame.across / 2, -BELOW * 0.8], [1, -0.6]),
      word('drawings.detail.beam', [right * 0.9, top / 2], [0.6, 1]),
    ],
    welds: [
      weldAt(roundEndWeld(brief, 'beam-upright', beam.wall, post.wall), [axis - half, 0], [-1, -0.6]),
      weldAt(roundEndWeld(brief, 'guide-end', guide.wall, beam.wall), [guide.across, 0], [1, -0.8]),
    ],
  };
}

/** An upright on the top of its post, from the front. x from their axis, y from the post's top. */
export function uprightOnPost(brief: Brief, gate: Backstop, mark: string, fence: Fence): Detail {
  const { post, height } = fence.brief;
  const half = post.across / 2;
  const tall = Math.max(4, 1.5 * post.across);
  return {
    id: `upright ${gate.path}`,
    title: say('drawings.detail.upright', { mark, post: post.name }),
    bounds: boundsOf([{ x: -half, y: -tall }, { x: half, y: tall }]),
    shapes: [
      ...[-half, half].map((x) => straight(PENS.outline, x, -tall, x, tall)),
      straight(PENS.outline, -half, 0, half, 0), straight(PENS.center, 0, -tall - 1, 0, tall + 1),
    ],
    dimensions: (h) => [size(h, 'x', [-half, -tall], [half, -tall], -1)],
    callouts: [
      word('drawings.detail.uprightLength', [half / 2, tall * 0.6], [1, 0.5], { length: printLength(inches(beamHeight() - height), brief.units) }),
      word('drawings.detail.post', [half / 2, -tall * 0.6], [1, -0.5]),
    ],
    welds: [weldAt(buttWeld(brief, 'upright-post', post.wall, 0, true), [-half, 0], [-1, 0.7])],
  };
}
