import { curvePoint, type Curve } from './curve.ts';
import { type Vec } from './points.ts';
import { liesOn } from './position.ts';

/** An upright box: least and greatest x and y. */
export interface Bounds {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** The least box round some points. Of no points: a box that touches nothing. */
export function pointBounds(points: readonly Vec[]): Bounds {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const p of points) {
    left = Math.min(left, p.x);
    bottom = Math.min(bottom, p.y);
    right = Math.max(right, p.x);
    top = Math.max(top, p.y);
  }
  return { left, bottom, right, top };
}

/** The least box round a line or an arc, exact: an arc's own extremes count where they are on it. */
export function curveBounds(curve: Curve<Vec>): Bounds {
  const points = [curvePoint(curve, 0), curvePoint(curve, 1)];
  if (curve.kind === 'arc') {
    const { center: { x, y }, radius } = curve;
    const extremes = [{ x: x + radius, y }, { x, y: y + radius }, { x: x - radius, y }, { x, y: y - radius }];
    points.push(...extremes.filter((p) => liesOn(curve, p, 0)));
  }
  return pointBounds(points);
}

/** Whether two boxes share a point. */
export function boundsTouch(a: Bounds, b: Bounds): boolean {
  return a.left <= b.right && b.left <= a.right && a.bottom <= b.top && b.bottom <= a.top;
}

/** The least box round several boxes. */
export function joinBounds(boxes: readonly Bounds[]): Bounds {
  return pointBounds(boxes.flatMap((b) => [{ x: b.left, y: b.bottom }, { x: b.right, y: b.top }]));
}
