import { curvePoint } from '../../base/curve.ts';
import { viewPoint, type Vec } from '../../base/points.ts';
import { type DimensionSpec } from '../../drafting/model.ts';
import { type Scene, type SizeShown } from './show.ts';

const seen = ({ x, y }: Vec): ReturnType<typeof viewPoint> => viewPoint(x, y);

/** Length and width of the squeeze pad; the one that is dragged must be shown. */
export function yardSizes({ input: { layout }, h, options }: Scene): readonly SizeShown[] {
  const run = layout.runs.find(({ name }) => name === 'squeeze-pad');
  const { left, right } = run?.faces ?? {};
  if (left === null || left === undefined || right === null || right === undefined) return [];
  const size = (path: string, from: Vec, to: Vec, reaches: readonly number[]): SizeShown => {
    const spec: DimensionSpec = { measure: 'aligned', required: options.dragged === path, from: seen(from), to: seen(to), offsets: reaches.map((reach) => reach * h) };
    return { path, spec };
  };
  return [
    size('squeezePad.length', curvePoint(right, 0), curvePoint(right, 1), [-4, -6, -9]),
    size('squeezePad.width', curvePoint(left, 0.7), curvePoint(right, 0.7), [0, 3, -3]),
  ];
}
