/** What a flat outline measures: its edges as lines and arcs, area, length and box. Inches. */
import { type Curve } from './curve.ts';
import { type Contour, type FlatCorner, type FlatShape } from './flat-shape.ts';
import { type Vec } from './points.ts';
import { inches, radians } from './quantity.ts';

/** The edge from one corner to the next. The bulge is tan(angle / 4), negative clockwise (DXF reference). */
export function edgeCurve(a: FlatCorner, b: Vec): Curve<Vec> {
  if (a.bulge === 0) return { kind: 'line', a: { x: a.x, y: a.y }, b: { x: b.x, y: b.y } };
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  // From the chord's middle to the center, as a share of the chord to its left: (1 - bulge²) / (4 bulge).
  const toCenter = (1 - a.bulge * a.bulge) / (4 * a.bulge);
  const center = { x: (a.x + b.x) / 2 - dy * toCenter, y: (a.y + b.y) / 2 + dx * toCenter };
  return {
    kind: 'arc',
    center,
    radius: inches((Math.hypot(dx, dy) * (1 + a.bulge * a.bulge)) / (4 * Math.abs(a.bulge))),
    start: radians(Math.atan2(a.y - center.y, a.x - center.x)),
    sweep: radians(4 * Math.atan(a.bulge)),
  };
}

/** A path's edges in order; a circle is one whole turn. */
export function contourCurves(contour: Contour): readonly Curve<Vec>[] {
  if (contour.kind === 'circle') return [{ kind: 'arc', center: contour.center, radius: inches(contour.radius), start: radians(0), sweep: radians(2 * Math.PI) }];
  const { corners } = contour;
  return corners.map((corner, i) => edgeCurve(corner, corners[(i + 1) % corners.length]!));
}

/** What a contour encloses, positive whichever way it runs. */
export function contourArea(contour: Contour): number {
  if (contour.kind === 'circle') return Math.PI * contour.radius * contour.radius;
  const { corners } = contour;
  const twice = corners.reduce((sum, a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    return sum + a.x * b.y - b.x * a.y + 2 * segmentArea(a, b);
  }, 0);
  return Math.abs(twice) / 2;
}

/** Between a bulged edge and its chord: r²(angle - sin angle)/2, positive where it bulges out of a counter-clockwise path. */
function segmentArea(a: FlatCorner, b: Vec): number {
  if (a.bulge === 0) return 0;
  const angle = 4 * Math.atan(a.bulge);
  const radius = (Math.hypot(b.x - a.x, b.y - a.y) * (1 + a.bulge * a.bulge)) / (4 * Math.abs(a.bulge));
  return (radius * radius * (angle - Math.sin(angle))) / 2;
}

/** Area of a flat part, its holes taken out. */
export const flatArea = (shape: FlatShape): number => shape.holes.reduce((sum, hole) => sum - contourArea(hole), contourArea(shape.outer));

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** The box round a contour, its arcs included. */
export function contourBox(contour: Contour): Box {
  if (contour.kind === 'circle') {
    const { center, radius } = contour;
    return { left: center.x - radius, right: center.x + radius, low: center.y - radius, high: center.y + radius };
  }
  const points = contourCurves(contour).flatMap((curve): Vec[] => {
    if (curve.kind === 'line') return [curve.a];
    const from = Math.min(curve.start, curve.start + curve.sweep);
    const to = Math.max(curve.start, curve.start + curve.sweep);
    const at = (angle: number): Vec => ({ x: curve.center.x + curve.radius * Math.cos(angle), y: curve.center.y + curve.radius * Math.sin(angle) });
    const quarters: Vec[] = [];
    for (let q = Math.ceil(from / (Math.PI / 2)); q * (Math.PI / 2) <= to; q++) quarters.push(at(q * (Math.PI / 2)));
    return quarters;
  });
  const all = [...contour.corners, ...points];
  return {
    left: Math.min(...all.map(({ x }) => x)), right: Math.max(...all.map(({ x }) => x)),
    low: Math.min(...all.map(({ y }) => y)), high: Math.max(...all.map(({ y }) => y)),
  };
}
