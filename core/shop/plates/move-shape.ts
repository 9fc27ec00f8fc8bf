import { type Contour, type FlatShape } from '../../base/flat-shape.ts';
import { add, type Vec } from '../../base/points.ts';

/** Quarter turns counter-clockwise: parts are laid square to the sheet, so that a turn is exact. */
export type Turn = 0 | 1 | 2 | 3;

/** A point turned about the origin. */
export function turnPoint({ x, y }: Vec, turn: Turn): Vec {
  switch (turn) {
    case 0:
      return { x, y };
    case 1:
      return { x: -y, y: x };
    case 2:
      return { x: -x, y: -y };
    case 3:
      return { x: y, y: -x };
  }
}

/** A flat shape turned about the origin, then moved. Its arcs bulge as before. */
export function moveShape(shape: FlatShape, by: Vec, turn: Turn = 0): FlatShape {
  const point = (p: Vec): Vec => add(turnPoint(p, turn), by);
  const contour = (c: Contour): Contour => (c.kind === 'circle'
    ? { kind: 'circle', center: point(c.center), radius: c.radius }
    : { kind: 'path', corners: c.corners.map((corner) => ({ ...point(corner), bulge: corner.bulge })) });
  return { outer: contour(shape.outer), holes: shape.holes.map(contour) };
}
