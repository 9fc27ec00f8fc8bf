import { curvePart } from '../../base/curve.ts';
import { viewPoint, type Vec } from '../../base/points.ts';
import { radians } from '../../base/quantity.ts';
import { type DimensionSpec } from '../../drafting/model.ts';
import { catwalkEnd } from '../catwalk-end.ts';
import { type Scene, type SizeShown } from './show.ts';

const seen = ({ x, y }: Vec): ReturnType<typeof viewPoint> => viewPoint(x, y);

/** Of the catwalk of which a field is dragged: how far along its run that end lies, or how wide its deck is. */
export function catwalkSizes({ input: { layout }, h, options }: Scene): readonly SizeShown[] {
  const offsets = [4, -4, 6, -6, 9].map((reach) => reach * h);
  return layout.catwalks.flatMap((catwalk): readonly SizeShown[] => {
    const ends = (['from', 'to'] as const).flatMap((which): readonly SizeShown[] => {
      const { line, share } = catwalkEnd(layout, catwalk, which);
      if (`${catwalk.path}.${which}` !== options.dragged || !(share > 0)) return [];
      const part = curvePart(line, 0, share);
      const spec: DimensionSpec = part.kind === 'line'
        ? { measure: 'aligned', required: true, from: seen(part.a), to: seen(part.b), offsets }
        : {
          measure: 'arc', required: true, center: seen(part.center), radius: part.radius, from: radians(Math.min(part.start, part.start + part.sweep)),
          to: radians(Math.max(part.start, part.start + part.sweep)), offsets,
        };
      return [{ path: `${catwalk.path}.${which}`, spec }];
    });
    const parts = catwalk.stretches.flatMap((stretch) => stretch.parts);
    const [a, b, c, d] = parts[Math.floor(parts.length / 2)]!.corners;
    const middle = (p: Vec, q: Vec): ReturnType<typeof viewPoint> => viewPoint((p.x + q.x) / 2, (p.y + q.y) / 2);
    return [...ends, { path: `${catwalk.path}.width`, spec: { measure: 'aligned', required: true, from: middle(a, b), to: middle(d, c), offsets } }];
  });
}
