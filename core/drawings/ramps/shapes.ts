import { type Vec, viewPoint } from '../../base/points.ts';
import { type Shape } from '../../drafting/model.ts';
import { type Pen } from '../../drafting/primitives.ts';

/** A straight line of a view; `piece` where it is a piece's outline. */
export const line = (pen: Pen, a: Vec, b: Vec, piece?: string): Shape => ({
  kind: 'curve',
  pen,
  curve: { kind: 'line', a: viewPoint(a.x, a.y), b: viewPoint(b.x, b.y) },
  ...(piece === undefined ? {} : { piece }),
});

/** A closed outline; a side of no length is left out. */
export const outline = (pen: Pen, corners: readonly Vec[], piece?: string): Shape[] =>
  corners.flatMap((corner, i) => {
    const next = corners[(i + 1) % corners.length]!;
    return Math.hypot(next.x - corner.x, next.y - corner.y) < 1e-9 ? [] : [line(pen, corner, next, piece)];
  });

export const rectangle = (pen: Pen, x0: number, x1: number, y0: number, y1: number, piece?: string): Shape[] =>
  outline(pen, [{ x: x0, y: y0 }, { x: x1, y: y0 }, { x: x1, y: y1 }, { x: x0, y: y1 }], piece);
