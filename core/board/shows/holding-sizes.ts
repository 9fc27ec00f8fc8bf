import { viewPoint, type Vec } from '../../base/points.ts';
import { type DimensionSpec } from '../../drafting/model.ts';
import { type Scene, type SizeShown } from './show.ts';

const seen = ({ x, y }: Vec): ReturnType<typeof viewPoint> => viewPoint(x, y);

/** Clear length and width of each holding pen; the one that is dragged must be shown. */
export function holdingSizes({ input: { layout }, h, options }: Scene): readonly SizeShown[] {
  return layout.holdingPens.flatMap(({ brief: { path }, corners: [, end, far, back] }) => {
    const size = (field: string, from: Vec, to: Vec): SizeShown => {
      const spec: DimensionSpec = {
        measure: 'aligned', required: options.dragged === `${path}.${field}`, from: seen(from), to: seen(to), offsets: [-3, 3, -5, 5, 8].map((reach) => reach * h),
      };
      return { path: `${path}.${field}`, spec };
    };
    return [size('length', back, far), size('width', end, far)];
  });
}
