/** How a man gate hangs and where it stops, from above at a large scale; for the first gate of each kind of fence. */
import { viewPoint } from '../base/points.ts';
import { inches } from '../base/quantity.ts';
import { GATE_PRACTICE } from '../brief/gate-practice.ts';
import { gateSection, gateSheet } from '../brief/gate-steel.ts';
import { type Brief } from '../brief/types.ts';
import { draft } from '../drafting/draft.ts';
import { PENS } from '../drafting/kit.ts';
import { type CalloutSpec, type DimensionSpec, type Drawing, type Shape } from '../drafting/model.ts';
import { type Fence } from '../layout/index.ts';
import { barrelWall, hingeWeld, latchWeld, stopWeld } from '../schedules/index.ts';
import { tabDepth } from '../parts/index.ts';
import { say, type StringKey } from '../text/index.ts';
import { boundsOf } from './bounds.ts';
import { type Detail, detailView } from './detail.ts';
import { weldAt } from './details/say-size.ts';
import { drawingOf } from './drawing-of.ts';
import { circle, rectangle, straight } from './gate-outline.ts';
import { type DrawInput, pageOf } from './input.ts';

/** How much of fence and leaf is drawn on either side, inches. */
const STUB = 7;

/** One drawing for each build of fence that has a man gate; `from`: how many of the series stand before. */
export function gateDetailDrawings(input: DrawInput, from: number): Drawing[] {
  const page = pageOf(input);
  const share = (page.room.width - 0.3) / 2;
  return builds(input).map(({ fence, mark }, i) => {
    const details = [hinge(input.brief, fence), stop(input.brief, fence)];
    const at = (margin: number): Drawing => {
      const views = details.map((detail, j) => detailView(page, detail, { ...page.room, x: page.room.x + j * (share + 0.3), width: share }, margin));
      return drawingOf(page, { views, tables: [], notes: [] }, '8', from + i, say('drawings.gate.detail', { mark }), say('drawings.gate.detailFile'));
    };
    return [8, 11, 14].map(at).find((drawing) => draft(input.font, page.block, drawing).unplaced.length === 0) ?? at(11);
  });
}

/** Fences alike in what stands at a jamb, each with the first man gate in it. */
function builds(input: DrawInput): readonly { readonly fence: Fence; readonly mark: string }[] {
  const found = new Map<string, { fence: Fence; mark: string }>();
  let count = 0;
  for (const one of input.layout.openings) {
    if (one.kind !== 'man-gate') continue;
    count += 1;
    const fence = input.layout.fences.find(({ run, side }) => run === one.run && side === one.side)!;
    const { k, kr, t, d, D } = fence.section;
    const key = [k, kr, t, d, D, fence.brief.post.name, fence.brief.construction].join('|');
    if (!found.has(key)) found.set(key, { fence, mark: `MG${String(count)}` });
  }
  return [...found.values()];
}

const note = (key: StringKey, x: number, y: number, toward: readonly [number, number]): CalloutSpec =>
  ({ text: say(key), target: viewPoint(x, y), piece: null, toward: { x: toward[0], y: toward[1] }, layer: 'NOTES', optional: true });

/** Jamb post, rail end and skin on one side of `jamb`; `way` is -1 where the fence lies to the left of it. */
function fenceEnd({ section, brief }: Fence, jamb: number, way: 1 | -1): Shape[] {
  const { k, kr, d, D, t } = section;
  const span = (near: number): [number, number] => (way < 0 ? [jamb - STUB, near] : [near, jamb + STUB]);
  const post = jamb + (way * brief.post.along) / 2;
  const [r0, r1] = span(brief.construction === 'lapped' ? jamb : post);
  const [s0, s1] = span(jamb);
  return [
    ...(brief.post.shape === 'round' ? [circle(PENS.outline, post, k, D / 2)] : rectangle(PENS.outline, post - brief.post.along / 2, post + brief.post.along / 2, k - D / 2, k + D / 2)),
    ...rectangle(PENS.outline, r0, r1, kr - d / 2, kr + d / 2),
    ...(t > 0 ? rectangle(PENS.thin, s0, s1, 0, t) : []),
  ];
}

/** x from the pin along the leaf, y outward from the face. */
function hinge(brief: Brief, fence: Fence): Detail {
  const { barrel, pin } = GATE_PRACTICE.hinge;
  const { k, t, D } = fence.section;
  const frame = gateSection(GATE_PRACTICE.manGate.frame).across;
  const at = { x: 0, y: t + barrel / 2 };
  const stile = { x: barrel / 2 + frame / 2, y: t + frame / 2 };
  const { thickness } = GATE_PRACTICE.hingeTab;
  const tabbed = fence.brief.construction === 'lapped';
  const deep = tabbed ? tabDepth(fence, fence.brief.post) : 0;
  const seat = tabbed ? inches(Math.min(thickness, barrelWall(barrel))) : fence.brief.post.wall;
  return {
    id: 'gate hinge',
    title: say('drawings.gate.hingeDetail'),
    bounds: boundsOf([{ x: -STUB - barrel / 2, y: -1 }, { x: STUB, y: k + D / 2 }]),
    shapes: [
      ...fenceEnd(fence, -barrel / 2, -1),
      ...(tabbed ? rectangle(PENS.outline, -barrel / 2 - thickness, -barrel / 2, t, t + deep) : []),
      circle(PENS.outline, at.x, at.y, barrel / 2),
      circle(PENS.thin, at.x, at.y, pin / 2),
      circle(PENS.outline, stile.x, stile.y, frame / 2),
      ...(t > 0 ? rectangle(PENS.thin, stile.x, STUB, 0, t) : []),
      straight(PENS.center, -STUB - barrel / 2, 0, STUB, 0),
    ],
    dimensions: (h) => sizes(h, [
      [viewPoint(-barrel / 2, at.y), viewPoint(barrel / 2, at.y), 'x'],
      [viewPoint(at.x, 0), viewPoint(at.x, at.y), 'y'],
      ...(tabbed ? [[viewPoint(-barrel / 2, t), viewPoint(-barrel / 2, t + deep), 'y'] as const] : []),
      [viewPoint(-barrel / 2 - fence.brief.post.along / 2, 0), viewPoint(-barrel / 2 - fence.brief.post.along / 2, k), 'y'],
    ]),
    callouts: [
      note('drawings.gate.hinge', at.x, at.y, [0.2, 1]), note('drawings.gate.stile', stile.x, stile.y, [1, 0.6]),
      note('drawings.gate.jamb', -barrel / 2 - fence.brief.post.along / 2, k, [-0.4, 1]),
      ...(tabbed ? [note('drawings.gate.tab', -barrel / 2 - thickness / 2, t + deep / 2, [-1, -0.6])] : []), note('drawings.section.cattle', STUB - 1, 0, [0.5, -1]),
    ],
    welds: [
      weldAt(hingeWeld(brief, 'hinge-leaf', gateSection(GATE_PRACTICE.manGate.frame).wall), [barrel / 2, at.y], [0.6, 1], true),
      weldAt(hingeWeld(brief, 'hinge-jamb', seat), [-barrel / 2, at.y], [-0.6, -1], true),
      ...(tabbed ? [weldAt(latchWeld(brief, 'tab-post', inches(Math.min(thickness, fence.brief.post.wall))), [-barrel / 2, t + deep], [0.8, 1], true)] : []),
    ],
  };
}

/** x from the leaf's free end, y outward from the face. */
function stop(brief: Brief, fence: Fence): Detail {
  const { strikeGap, stop: bar } = GATE_PRACTICE.manGate;
  const { k, t, D } = fence.section;
  const frame = gateSection(GATE_PRACTICE.manGate.frame).across;
  const back = t + frame;
  return {
    id: 'gate stop',
    title: say('drawings.gate.stopDetail'),
    bounds: boundsOf([{ x: -STUB, y: -1 }, { x: strikeGap + STUB, y: k + D / 2 }]),
    shapes: [
      ...fenceEnd(fence, strikeGap, 1),
      circle(PENS.outline, -frame / 2, t + frame / 2, frame / 2),
      ...(t > 0 ? rectangle(PENS.thin, -STUB, -frame / 2, 0, t) : []),
      ...rectangle(PENS.outline, strikeGap - bar.width, strikeGap, back, back + bar.thickness),
      straight(PENS.center, -STUB, 0, strikeGap + STUB, 0),
    ],
    dimensions: (h) => sizes(h, [
      [viewPoint(0, t + frame / 2), viewPoint(strikeGap, t + frame / 2), 'x'],
      [viewPoint(strikeGap - bar.width, back), viewPoint(strikeGap, back), 'x'],
    ]),
    callouts: [
      note('drawings.gate.stop', strikeGap - bar.width / 2, back + bar.thickness / 2, [-0.4, 1]), note('drawings.gate.stile', -frame / 2, t + frame / 2, [-1, 0.6]),
      note('drawings.gate.jamb', strikeGap + fence.brief.post.along / 2, k, [0.4, 1]), note('drawings.section.cattle', -STUB + 1, 0, [-0.5, -1]),
    ],
    welds: [weldAt(stopWeld(brief, gateSheet(bar.plate).thickness, fence.brief.post.wall), [strikeGap, back + bar.thickness], [-0.5, 1], true)],
  };
}

const sizes = (h: number, list: readonly (readonly [ReturnType<typeof viewPoint>, ReturnType<typeof viewPoint>, 'x' | 'y'])[]): readonly DimensionSpec[] =>
  list.map(([from, to, along]) => ({
    measure: 'linear', along, required: false, decimal: true, from, to,
    offsets: [-5, -8, -11, -14, 5, 8, 11, 14, 18, -18].map((reach) => (along === 'x' ? 1 : -1) * reach * h),
  }));
