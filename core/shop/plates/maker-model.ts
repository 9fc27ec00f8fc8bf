import makerjs, { type IModel, type IPath } from 'makerjs';
import { type Curve } from '../../base/curve.ts';
import { contourCurves } from '../../base/flat-curves.ts';
import { type FlatShape } from '../../base/flat-shape.ts';
import { type Vec } from '../../base/points.ts';
import { toDegrees, type Radians } from '../../base/quantity.ts';
import { type Polyline } from '../stroke-text/index.ts';

/** What is cut through, and what is only scribed. */
export type TableLayer = 'CUT' | 'ETCH';

const degreesOf = (angle: number): number => toDegrees(angle as Radians);

function pathOf(curve: Curve<Vec>): IPath {
  if (curve.kind === 'line') return new makerjs.paths.Line([curve.a.x, curve.a.y], [curve.b.x, curve.b.y]);
  const center = [curve.center.x, curve.center.y];
  if (Math.abs(curve.sweep) >= 2 * Math.PI) return new makerjs.paths.Circle(center, curve.radius);
  // Arcs run counter-clockwise there.
  const [from, to] = curve.sweep > 0 ? [curve.start, curve.start + curve.sweep] : [curve.start + curve.sweep, curve.start];
  return new makerjs.paths.Arc(center, curve.radius, degreesOf(from), degreesOf(to));
}

const onLayer = (path: IPath, layer: TableLayer): IPath => ({ ...path, layer });

/** The edges of one flat shape, on CUT, contour by contour: the outer one first. */
export const cutPaths = (shape: FlatShape): readonly (readonly IPath[])[] =>
  [shape.outer, ...shape.holes].map((contour) => contourCurves(contour).map((curve) => onLayer(pathOf(curve), 'CUT')));

/** Strokes as lines on ETCH. */
export const etchPaths = (strokes: readonly Polyline[]): readonly IPath[] =>
  strokes.flatMap((stroke) => stroke.slice(1).map((to, i) => onLayer(new makerjs.paths.Line([stroke[i]!.x, stroke[i]!.y], [to.x, to.y]), 'ETCH')));

/** Flat shapes and strokes as one model, in that order. */
export function tableModel(shapes: readonly FlatShape[], strokes: readonly Polyline[]): IModel {
  const paths = [...shapes.flatMap((shape) => cutPaths(shape).flat()), ...etchPaths(strokes)];
  return { units: makerjs.unitType.Inch, paths: Object.fromEntries(paths.map((path, i) => [`p${String(i)}`, path])) };
}
