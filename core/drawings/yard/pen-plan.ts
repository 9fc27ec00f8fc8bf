/** A sort pen in plan with the sort alley beside it, its gate and its sizes. */
import { curvePoint } from '../../base/curve.ts';
import { viewPoint, type Vec } from '../../base/points.ts';
import { type CalloutSpec, type DimensionSpec } from '../../drafting/model.ts';
import { type SortPenBrief } from '../../brief/types.ts';
import { isJambedGate, type Run } from '../../layout/index.ts';
import { gateMarks } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf, type Turn } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { type DrawInput } from '../input.ts';
import { note, runShapes, turnTo, walk as walked } from './turned.ts';

/** The fences round a pen: the alley's beside it and its own; where it shares its start, the end of the pen before it. */
function runsAround({ layout, brief }: DrawInput, pen: SortPenBrief, index: number): ReadonlySet<string> {
  const before = brief.sortPens[index - 1];
  const own = layout.runs.map(({ name }) => name).filter((name) => name === pen.name || name.startsWith(`${pen.name}-`));
  return new Set([...own, ...(before?.side === pen.side ? [`${before.name}-out`] : []), ...(index === 0 ? ['sort-shoulder'] : [])]);
}

export function penPlan(input: DrawInput, pen: SortPenBrief, index: number): Detail {
  const run = input.layout.runs.find(({ name }) => name === pen.name);
  if (run === undefined) throw new Error(`a sort pen without its run: ${pen.name}`);
  const turn = turnTo(run);
  const runs = runsAround(input, pen, index);
  const fences = input.layout.fences.filter((fence) => runs.has(fence.run));
  const corners = fences.flatMap(({ face }) => [0, 1].map((share) => turn.point(curvePoint(face, share))));
  const reach = Math.max(...fences.map(({ section }) => section.k + section.D / 2));
  const box = boundsOf(corners);
  const backs = input.layout.fences.filter((fence) => fence.run === `${pen.name}-back`).flatMap(({ face }) => [0, 1].map((share) => turn.point(curvePoint(face, share))));
  const sign = pen.side === 'left' ? 1 : -1;
  return {
    id: pen.name,
    title: say('drawings.yard.penTitle', { pen: pen.name }),
    bounds: { left: box.left - reach, right: box.right + reach, low: box.low - reach, high: box.high + reach },
    shapes: [...runShapes(input, turn, runs), ...walked(run.length)],
    dimensions: (h) => dimensionsOf(input, pen, run, backs, sign, h),
    callouts: calloutsOf(input, pen, run, turn),
  };
}

function dimensionsOf({ layout }: DrawInput, pen: SortPenBrief, run: Run, backs: readonly Vec[], sign: 1 | -1, h: number): readonly DimensionSpec[] {
  const half = run.width / 2;
  const at = (x: number, y: number): ReturnType<typeof viewPoint> => viewPoint(x, y);
  const offsets = (...reaches: readonly number[]): readonly number[] => reaches.map((reach) => reach * h);
  const gate = layout.openings.find((one) => one.path === pen.path);
  const [from, to] = gate !== undefined && isJambedGate(gate) ? [gate.from, gate.to] : [null, null];
  const [first, last] = backs;
  return [
    { measure: 'linear', along: 'y', required: true, from: at(run.length, -half), to: at(run.length, half), offsets: offsets(-4, -6, -9, 4, 6) },
    { measure: 'linear', along: 'x', required: true, from: at(0, -sign * half), to: at(run.length, -sign * half), offsets: offsets(-sign * 4, -sign * 6, -sign * 9, sign * 4) },
    ...(from === null || to === null ? [] : [
      { measure: 'linear' as const, along: 'x' as const, required: true, from: at(from, sign * half), to: at(to, sign * half), offsets: offsets(sign * 4, sign * 6, sign * 9, -sign * 4) },
    ]),
    ...(first === undefined || last === undefined ? [] : [
      { measure: 'linear' as const, along: 'x' as const, required: true, from: at(first.x, first.y), to: at(last.x, last.y), offsets: offsets(sign * 4, sign * 6, sign * 9, -sign * 4) },
      { measure: 'linear' as const, along: 'y' as const, required: true, from: at(run.length, sign * half), to: at(run.length, last.y), offsets: offsets(-sign * 4, -sign * 6, -sign * 9, sign * 4) },
    ]),
  ];
}

function calloutsOf({ layout }: DrawInput, pen: SortPenBrief, run: Run, turn: Turn): readonly CalloutSpec[] {
  const gate = layout.openings.find((one) => one.path === pen.path);
  const walk = note(say('drawings.yard.walk'), { x: run.length * 0.85, y: 0 }, { x: 0.3, y: pen.side === 'left' ? -1 : 1 });
  if (gate === undefined) return [walk];
  return [walk, note(gateMarks(layout).get(gate.path)!, turn.point(gate.at), { x: 0.2, y: pen.side === 'left' ? 1 : -1 })];
}
