/** Whether an outline is fit for a table, by what the table's file may hold (drawings contract, plates). */
import makerjs, { type IModel, type IPath, type IPathCircle, type IPathLine, type IPoint } from 'makerjs';
import { contourBox, type Box } from '../../base/flat-curves.ts';
import { type Contour, type FlatShape } from '../../base/flat-shape.ts';
import { CUT_GAP } from '../../base/tolerance.ts';
import { cutPaths } from './maker-model.ts';
import { type PlateRefusal } from './types.ts';

/** The first rule that a plate's outline breaks; null where it is fit. */
export function refusalOf(shape: FlatShape): PlateRefusal | null {
  const contours = [shape.outer, ...shape.holes];
  // Before any path is made: an arc of an impossible radius would be enlarged in silence.
  if (!contours.every(isFinite)) return 'not-finite';
  if (contours.some(hasNothing)) return 'zero-length';
  const paths = cutPaths(shape);
  const all = paths.flat();
  if (all.some((path) => makerjs.measure.pathLength(path) <= CUT_GAP)) return 'zero-length';
  if (all.some((path, i) => all.slice(i + 1).some((other) => makerjs.measure.isPathEqual(path, other, CUT_GAP)))) return 'twice';
  if (!paths.every(isOneChain)) return 'open';
  if (anyCrossing(paths)) return 'crossing';
  return holesInside(shape, paths) ? null : 'hole-outside';
}

const isFinite = (contour: Contour): boolean => (contour.kind === 'circle'
  ? [contour.center.x, contour.center.y, contour.radius]
  : contour.corners.flatMap(({ x, y, bulge }) => [x, y, bulge])).every(Number.isFinite);

function hasNothing(contour: Contour): boolean {
  if (contour.kind === 'circle') return contour.radius <= CUT_GAP;
  const { corners } = contour;
  return corners.length < 2 || corners.some((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    return Math.hypot(b.x - a.x, b.y - a.y) <= CUT_GAP;
  });
}

const modelOf = (paths: readonly IPath[]): IModel => ({ paths: Object.fromEntries(paths.map((path, i) => [String(i), { ...path }])) });

/** Every edge of a contour in one closed chain, ends together within the gap. */
function isOneChain(paths: readonly IPath[]): boolean {
  const chains = makerjs.model.findChains(modelOf(paths), { pointMatchingDistance: CUT_GAP });
  const list = Array.isArray(chains) ? chains : Object.values(chains).flat();
  const [chain] = list;
  return list.length === 1 && chain?.endless === true && chain.links.length === paths.length;
}

/** Two edges that meet elsewhere than where one follows the other. */
function anyCrossing(contours: readonly (readonly IPath[])[]): boolean {
  const edges = contours.flatMap((paths, c) => paths.map((path, i) => ({ path, c, i, n: paths.length, box: boxOf(path) })));
  return edges.some((a, k) => edges.slice(k + 1).some((b) => {
    if (!overlap(a.box, b.box)) return false;
    const meets = makerjs.path.intersection(a.path, b.path)?.intersectionPoints ?? [];
    const follows = a.c === b.c && (Math.abs(a.i - b.i) === 1 || Math.abs(a.i - b.i) === a.n - 1);
    if (!follows) return meets.length > 0;
    const ends = endsOf(a.path).filter((p) => endsOf(b.path).some((q) => near(p, q)));
    return meets.some((point) => !ends.some((end) => near(point, end))) || foldsBack(a.path, b.path);
  }));
}

/** A circle has no ends. */
const endsOf = (path: IPath): readonly IPoint[] => (makerjs.isPathCircle(path) ? [] : makerjs.point.fromPathEnds(path));
/** Where two edges meet is found no better than to the root of the gap where they are tangent. */
const near = (a: IPoint, b: IPoint): boolean => Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!) <= Math.sqrt(CUT_GAP);

/** A line that runs back over the one before it. */
function foldsBack(a: IPath, b: IPath): boolean {
  if (!makerjs.isPathLine(a) || !makerjs.isPathLine(b)) return false;
  const [one, other] = [a as IPathLine, b as IPathLine];
  return makerjs.measure.isSlopeEqual(makerjs.measure.lineSlope(one), makerjs.measure.lineSlope(other)) && makerjs.measure.isLineOverlapping(one, other, true);
}

function boxOf(path: IPath): Box {
  const { low, high } = makerjs.measure.pathExtents(path);
  return { left: low[0]!, low: low[1]!, right: high[0]!, high: high[1]! };
}
const overlap = (a: Box, b: Box): boolean =>
  a.left <= b.right + CUT_GAP && b.left <= a.right + CUT_GAP && a.low <= b.high + CUT_GAP && b.low <= a.high + CUT_GAP;

/** Nothing crosses here any more, so one point of each hole tells. */
function holesInside(shape: FlatShape, [outer, ...holes]: readonly (readonly IPath[])[]): boolean {
  return holes.every((hole, i) => {
    const at = pointOn(hole[0]!);
    const inside = (paths: readonly IPath[], contour: Contour): boolean => within(at, contourBox(contour)) && makerjs.measure.isPointInsideModel(at, modelOf(paths));
    return inside(outer!, shape.outer) && !holes.some((other, k) => k !== i && inside(other, shape.holes[k]!));
  });
}

const within = (at: IPoint, box: Box): boolean => at[0]! > box.left && at[0]! < box.right && at[1]! > box.low && at[1]! < box.high;
function pointOn(path: IPath): IPoint {
  if (!makerjs.isPathCircle(path)) return endsOf(path)[0]!;
  const { origin, radius } = path as IPathCircle;
  return [origin[0]! + radius, origin[1]!];
}
