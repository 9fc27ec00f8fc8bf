/** The squeeze pad in plan: slab with its sizes, fences, fall, pattern, the roof's outline. */
import { radians, toDegrees } from '../../base/quantity.ts';
import { viewPoint, type Vec } from '../../base/points.ts';
import { PENS } from '../../drafting/kit.ts';
import { type CalloutSpec, type DimensionSpec } from '../../drafting/model.ts';
import { type RoofBrief, type SqueezePadBrief } from '../../brief/types.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { type DrawInput } from '../input.ts';
import { arrow, note, rectangle, runShapes, turnTo, walk } from './turned.ts';

const RUNS: ReadonlySet<string> = new Set(['pad-shoulder', 'squeeze-pad']);

/** Null where the project has no pad. */
export function padPlan(input: DrawInput): Detail | null {
  const { brief, layout } = input;
  const pad = brief.squeezePad;
  const run = layout.runs.find(({ name }) => name === 'squeeze-pad');
  if (pad === null || run === undefined) return null;
  const half = pad.width / 2;
  const [low, high] = [{ x: 0, y: -half }, { x: pad.length, y: half }];
  const roof = pad.roof === null ? null : roofCorners(pad, pad.roof);
  const back = Math.max(...layout.fences.filter((fence) => RUNS.has(fence.run)).map(({ section }) => section.k + section.D / 2));
  return {
    id: 'squeeze-pad',
    title: say('drawings.yard.padTitle'),
    bounds: boundsOf([{ x: -back, y: -half - back }, { x: pad.length + back, y: half + back }, ...(roof ?? [])]),
    shapes: [
      ...rectangle(PENS.thin, low, high),
      ...runShapes(input, turnTo(run), RUNS),
      ...walk(pad.length),
      ...[-0.25, 0.25].flatMap((across) => arrow(PENS.note, { x: pad.length * 0.2, y: across * pad.width }, pad.length * 0.25)),
      ...(roof === null ? [] : rectangle(PENS.hidden, roof[0], roof[1])),
    ],
    dimensions: (h) => dimensionsOf(pad, roof, h),
    callouts: calloutsOf(input, pad, roof),
  };
}

/** The roof stands over the pad's middle. */
function roofCorners(pad: SqueezePadBrief, roof: RoofBrief): readonly [Vec, Vec] {
  const middle = pad.length / 2;
  return [{ x: middle - roof.length / 2, y: -roof.width / 2 }, { x: middle + roof.length / 2, y: roof.width / 2 }];
}

function dimensionsOf(pad: SqueezePadBrief, roof: readonly [Vec, Vec] | null, h: number): readonly DimensionSpec[] {
  const half = pad.width / 2;
  const out = (reaches: readonly number[]): readonly number[] => reaches.map((reach) => reach * h);
  const size = (along: 'x' | 'y', from: Vec, to: Vec, reaches: readonly number[]): DimensionSpec =>
    ({ measure: 'linear', along, required: true, from: viewPoint(from.x, from.y), to: viewPoint(to.x, to.y), offsets: out(reaches) });
  return [
    size('x', { x: 0, y: -half }, { x: pad.length, y: -half }, [-4, -6, -9, 4, 6]),
    size('y', { x: pad.length, y: -half }, { x: pad.length, y: half }, [-4, -6, -9, 4, 6]),
    ...(roof === null ? [] : [
      size('x', { x: roof[0].x, y: roof[1].y }, roof[1], [4, 6, 9, -4, -6]),
      size('y', roof[0], { x: roof[0].x, y: roof[1].y }, [4, 6, 9, -4, -6]),
    ]),
  ];
}

function calloutsOf({ brief }: DrawInput, pad: SqueezePadBrief, roof: readonly [Vec, Vec] | null): readonly CalloutSpec[] {
  const { fall } = brief.floors;
  const percent = String(Math.round(fall * 1000) / 10);
  const degrees = String(Math.round(toDegrees(radians(Math.atan(fall))) * 10) / 10);
  return [
    note(say('drawings.yard.walk'), { x: pad.length * 0.75, y: 0 }, { x: 0.3, y: 1 }),
    note(fall === 0 ? say('drawings.yard.level') : say('drawings.yard.fall', { percent, degrees }), { x: pad.length * 0.35, y: pad.width * 0.25 }, { x: -0.5, y: 1 }),
    ...(roof === null ? [] : [note(say('drawings.yard.roof'), { x: roof[1].x, y: roof[0].y / 2 }, { x: 1, y: -1 })]),
  ];
}
