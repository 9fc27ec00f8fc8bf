import { curvePoint } from '../../base/curve.ts';
import { planPoint, unitAt, type PlanPoint } from '../../base/points.ts';
import { type Brief } from '../../brief/types.ts';
import { type Run } from '../types.ts';

/** The four corners of the roof over the pad's middle, in turn, its length along the walk; none without one. */
export function roofCorners({ squeezePad }: Brief, runs: readonly Run[]): readonly PlanPoint[] {
  const run = runs.find(({ name }) => name === 'squeeze-pad');
  const roof = squeezePad?.roof ?? null;
  if (roof === null || run === undefined) return [];
  const middle = curvePoint(run.path, 0.5);
  const along = unitAt(run.headings[0]);
  return [[-1, -1], [1, -1], [1, 1], [-1, 1]].map(([way = 0, side = 0]) => {
    const [x, y] = [(way * roof.length) / 2, (side * roof.width) / 2];
    return planPoint(middle.x + along.x * x - along.y * y, middle.y + along.y * x + along.x * y);
  });
}
