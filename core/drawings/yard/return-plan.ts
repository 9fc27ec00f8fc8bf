/** The return alley in plan: each run with its length, clear width and radius, and the gates in its fences. */
import { curvePoint } from '../../base/curve.ts';
import { radians } from '../../base/quantity.ts';
import { type DimensionSpec } from '../../drafting/model.ts';
import { RETURN_GATE } from '../../brief/holding-gate.ts';
import { type Run } from '../../layout/index.ts';
import { gateMarks } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf, extremesOf, type Turn, turnPlan } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { type DrawInput } from '../input.ts';
import { nameCallouts } from '../plan.ts';
import { baySizes } from './bay-sizes.ts';
import { note, runShapes } from './turned.ts';

/** As it lies in the plan. Null where the project has none. */
export function returnPlan(input: DrawInput): Detail | null {
  const { layout } = input;
  const own = layout.runs.filter(({ name }) => /^return-\d+$/.test(name));
  if (own.length === 0) return null;
  const runs = new Set(own.map(({ name }) => name));
  const turn = turnPlan({ x: 0, y: 0 }, 0);
  const fences = layout.fences.filter((fence) => runs.has(fence.run));
  const reach = Math.max(...fences.map(({ section }) => section.k + section.D / 2));
  const box = boundsOf(fences.flatMap(({ face }) => extremesOf(face)));
  const middle = { x: (box.left + box.right) / 2, y: (box.low + box.high) / 2 };
  const gates = layout.openings.filter((gate) => runs.has(gate.run) || gate.path === RETURN_GATE);
  return {
    id: 'return-alley',
    title: say('drawings.holding.returnTitle'),
    bounds: { left: box.left - reach, right: box.right + reach, low: box.low - reach, high: box.high + reach },
    shapes: runShapes(input, turn, runs),
    dimensions: (h) => [...own.flatMap((run) => runSizes(run, turn, h)), ...fences.flatMap((fence) => baySizes(fence, turn, false, h))],
    callouts: [
      ...own.flatMap((run) => nameCallouts(input, run, middle)),
      ...gates.map((gate) => note(gateMarks(layout).get(gate.path)!, turn.point(gate.at), { x: 1, y: 1 })),
    ],
  };
}

/** A straight run by its length and width, a turn by its width and its inside radius. */
function runSizes({ faces, kind, hand }: Run, turn: Turn, h: number): readonly DimensionSpec[] {
  const { left, right } = faces;
  if (left === null || right === null) return [];
  const across = (share: number): DimensionSpec => ({
    measure: 'aligned', required: true, from: turn.point(curvePoint(left, share)), to: turn.point(curvePoint(right, share)), offsets: [0, 3, -3, 6, -6].map((reach) => reach * h),
  });
  const inside = hand === 'left' ? left : right;
  if (kind === 'straight' || inside.kind === 'line') {
    return [
      { measure: 'aligned', required: true, from: turn.point(curvePoint(right, 0)), to: turn.point(curvePoint(right, 1)), offsets: [-6, -8, -11, 6, 8].map((reach) => reach * h) },
      across(0.5),
    ];
  }
  return [
    across(0.5),
    {
      measure: 'radius', required: true, center: turn.point(inside.center), radius: inside.radius,
      angles: [0.35, 0.65, 0.2, 0.8, 0.5].map((share) => radians(inside.start + inside.sweep * share)),
    },
  ];
}
