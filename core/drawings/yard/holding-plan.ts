/** A holding pen in plan with the drive alley beside it: sides, a diagonal, posts and gates. */
import { viewPoint, type Vec } from '../../base/points.ts';
import { PENS } from '../../drafting/kit.ts';
import { type CalloutSpec, type DimensionSpec } from '../../drafting/model.ts';
import { isJambedGate, type Fence, type HoldingPen, type Run } from '../../layout/index.ts';
import { gateMarks } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf, extremesOf, type Turn } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { type DrawInput } from '../input.ts';
import { baySizes } from './bay-sizes.ts';
import { note, runShapes, segment, turnTo, walk } from './turned.ts';

/** The drive alley's stretch and the fences that close the pen: it shares its start with the end of the pen before it. */
function runsAround({ layout }: DrawInput, { brief }: HoldingPen): ReadonlySet<string> {
  const before = layout.holdingPens[layout.holdingPens.findIndex((one) => one.brief.name === brief.name) - 1];
  return new Set([brief.name, before === undefined ? `${brief.name}-start` : `${before.brief.name}-end`, `${brief.name}-back`, `${brief.name}-end`]);
}

export function holdingPlan(input: DrawInput, pen: HoldingPen): Detail {
  const { layout } = input;
  const run = layout.runs.find(({ name }) => name === pen.brief.name);
  if (run === undefined) throw new Error(`a holding pen without its stretch of the drive alley: ${pen.brief.name}`);
  const turn = turnTo(run);
  const runs = runsAround(input, pen);
  const fences = layout.fences.filter((fence) => runs.has(fence.run));
  const corners = pen.corners.map((corner) => turn.point(corner));
  const reach = Math.max(...fences.map(({ section }) => section.k + section.D / 2));
  // Its end's fence runs on where the pen beside it is deeper.
  const steel = runShapes(input, turn, runs);
  const box = boundsOf([...corners, ...steel.flatMap((shape) => (shape.kind === 'curve' ? extremesOf(shape.curve) : [shape.center]))]);
  return {
    id: `holding ${pen.brief.name}`,
    title: say('drawings.holding.penTitle', { pen: pen.brief.name }),
    bounds: { left: box.left - reach, right: box.right + reach, low: box.low - reach, high: box.high + reach },
    shapes: [...steel, ...walk(run.length), segment(PENS.center, corners[1]!, corners[3]!)],
    dimensions: (h) => dimensionsOf(input, pen, run, { corners, fences, turn, h }),
    callouts: calloutsOf(input, pen, runs, turn),
  };
}

interface Placed {
  readonly corners: readonly Vec[];
  readonly fences: readonly Fence[];
  readonly turn: Turn;
  readonly h: number;
}

function dimensionsOf({ layout }: DrawInput, pen: HoldingPen, run: Run, { corners, fences, turn, h }: Placed): readonly DimensionSpec[] {
  const sign = pen.side === 'left' ? 1 : -1;
  const half = run.width / 2;
  const [near, nearEnd, farEnd, far] = corners as [Vec, Vec, Vec, Vec];
  const size = (along: 'x' | 'y', from: Vec, to: Vec, reaches: readonly number[]): DimensionSpec =>
    ({ measure: 'linear', along, required: true, from: viewPoint(from.x, from.y), to: viewPoint(to.x, to.y), offsets: reaches.map((reach) => reach * h) });
  const gate = layout.openings.find(({ path }) => path === pen.brief.path);
  const jambs = gate !== undefined && isJambedGate(gate) ? [gate.from, gate.to] as const : null;
  const inward = [-sign * 4, -sign * 6, -sign * 9, sign * 4, sign * 6];
  return [
    size('x', far, farEnd, [7, 9, 12, -4].map((reach) => sign * reach)),
    size('y', nearEnd, farEnd, [-7, -9, -12, 4].map((reach) => sign * reach)),
    { measure: 'aligned', required: true, from: viewPoint(near.x, near.y), to: viewPoint(farEnd.x, farEnd.y), offsets: [0, 2, -2, 4, -4].map((reach) => reach * h) },
    size('y', { x: run.length, y: -half }, { x: run.length, y: half }, [-7, -9, -12, 4, 7]),
    ...(jambs === null ? [] : [
      size('x', { x: jambs[0], y: sign * half }, { x: jambs[1], y: sign * half }, inward),
      size('x', { x: jambs[1], y: sign * half }, { x: nearEnd.x, y: sign * half }, inward),
    ]),
    ...fences.flatMap((fence) => baySizes(fence, turn, fence.run !== run.name, h)),
  ];
}

function calloutsOf({ layout }: DrawInput, pen: HoldingPen, runs: ReadonlySet<string>, turn: Turn): readonly CalloutSpec[] {
  const marks = gateMarks(layout);
  const out = { x: 0.3, y: pen.side === 'left' ? 1 : -1 };
  return [
    note(pen.brief.name, turn.point(pen.middle), { x: 1, y: out.y }),
    ...layout.openings.filter(({ run }) => runs.has(run)).map((gate) => note(marks.get(gate.path)!, turn.point(gate.at), out)),
  ];
}
