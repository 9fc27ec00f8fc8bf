import { viewPoint, type Vec } from '../../base/points.ts';
import { type DimensionSpec } from '../../drafting/model.ts';
import { roofCorners } from '../../layout/index.ts';
import { type Scene, type SizeShown } from './show.ts';

const seen = ({ x, y }: Vec): ReturnType<typeof viewPoint> => viewPoint(x, y);

/** Of the roof whose length or width is dragged: that edge. */
export function roofSizes({ input: { brief, layout }, h, options: { dragged } }: Scene): readonly SizeShown[] {
  const [first, second, third] = roofCorners(brief, layout.runs);
  if (dragged === null || first === undefined || second === undefined || third === undefined) return [];
  const size = (path: string, from: Vec, to: Vec): SizeShown => {
    const spec: DimensionSpec = { measure: 'aligned', required: true, from: seen(from), to: seen(to), offsets: [-4, -6, -9].map((reach) => reach * h) };
    return { path, spec };
  };
  return [size('squeezePad.roof.length', first, second), size('squeezePad.roof.width', second, third)];
}
