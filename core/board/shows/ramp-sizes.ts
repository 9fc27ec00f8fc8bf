import { viewPoint, type Vec } from '../../base/points.ts';
import { radians } from '../../base/quantity.ts';
import { type DimensionSpec } from '../../drafting/model.ts';
import { type Ramp } from '../../layout/index.ts';
import { rampPoint } from '../ramp-points.ts';
import { type Scene, type SizeShown } from './show.ts';

const seen = ({ x, y }: Vec): ReturnType<typeof viewPoint> => viewPoint(x, y);

/** Of the ramp of which a field is dragged: that field's size. Where its low end lies is measured from the plan's origin. */
export function rampSizes({ input: { layout }, h, options }: Scene): readonly SizeShown[] {
  return layout.ramps.flatMap((ramp) => sizesOf(ramp, h, options.scale)).filter(({ path }) => path === options.dragged);
}

function sizesOf(ramp: Ramp, h: number, scale: number): readonly SizeShown[] {
  const { path, width, heading } = ramp.brief;
  const offsets = [4, -4, 6, -6, 9].map((reach) => reach * h);
  const along = (from: Vec, to: Vec): DimensionSpec => ({ measure: 'aligned', required: true, from: seen(from), to: seen(to), offsets });
  const apart = (axis: 'x' | 'y'): DimensionSpec => ({ measure: 'linear', along: axis, required: true, from: viewPoint(0, 0), to: seen(ramp.at), offsets });
  const middle = ramp.figures.run / 2;
  const reach = ramp.length * scale;
  return [
    { path: `${path}.dockLength`, spec: along(rampPoint(ramp, ramp.figures.run, 0), rampPoint(ramp, ramp.length, 0)) },
    { path: `${path}.width`, spec: along(rampPoint(ramp, middle, -width / 2), rampPoint(ramp, middle, width / 2)) },
    { path: `${path}.at[0]`, spec: apart('x') },
    { path: `${path}.at[1]`, spec: apart('y') },
    ...(heading === null ? [] : [{
      path: `${path}.heading`,
      spec: {
        measure: 'angle' as const, required: true, center: seen(ramp.at), from: radians(Math.min(0, heading)), to: radians(Math.max(0, heading)),
        offsets: [0.5 * reach, 0.3 * reach, 8 * h],
      },
    }]),
  ];
}
