import { viewPoint } from '../../base/points.ts';
import { PENS } from '../../drafting/kit.ts';
import { type Shape } from '../../drafting/model.ts';
import { type Layout } from '../../layout/index.ts';

/** The roof's outline in the plan, dashed, where the pad is among these runs. */
export function roofShapes({ roof }: Layout, runs: ReadonlySet<string>): Shape[] {
  if (!runs.has('squeeze-pad')) return [];
  return roof.map((corner, i): Shape => {
    const next = roof[(i + 1) % roof.length]!;
    return { kind: 'curve', pen: PENS.hidden, curve: { kind: 'line', a: viewPoint(corner.x, corner.y), b: viewPoint(next.x, next.y) } };
  });
}
