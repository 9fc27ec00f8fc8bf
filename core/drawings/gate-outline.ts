/** A gate from the front as shapes: its members by their outlines, mitres at the frame's corners. */
import { inches } from '../base/quantity.ts';
import { viewPoint } from '../base/points.ts';
import { PENS } from '../drafting/kit.ts';
import { type Shape } from '../drafting/model.ts';
import { type Pen } from '../drafting/primitives.ts';
import { type GateOutline, type Piece } from '../parts/index.ts';

/** A piece that stands in a gate. */
export interface GatePiece {
  readonly piece: Piece;
  readonly place: Extract<Piece['place'], { kind: 'gate' }>;
}

export const straight = (pen: Pen, ax: number, ay: number, bx: number, by: number, piece?: string): Shape => ({
  kind: 'curve',
  pen,
  curve: { kind: 'line', a: viewPoint(ax, ay), b: viewPoint(bx, by) },
  ...(piece === undefined ? {} : { piece }),
});

export const rectangle = (pen: Pen, x0: number, x1: number, y0: number, y1: number, piece?: string): Shape[] =>
  [straight(pen, x0, y0, x1, y0, piece), straight(pen, x1, y0, x1, y1, piece), straight(pen, x1, y1, x0, y1, piece), straight(pen, x0, y1, x0, y0, piece)];

export const circle = (pen: Pen, x: number, y: number, radius: number): Shape => ({ kind: 'circle', pen, center: viewPoint(x, y), radius: inches(radius) });

/** Every member; `lift` raises those that slide. */
export function gateShapes(pieces: readonly GatePiece[]): Shape[] {
  const frame = pieces.flatMap(({ place: { outline } }) => (outline.kind === 'bar' && outline.mitred ? [outline] : []));
  const middle = {
    x: frame.reduce((sum, { a, b }) => sum + a.x + b.x, 0) / (2 * frame.length),
    y: frame.reduce((sum, { a, b }) => sum + a.y + b.y, 0) / (2 * frame.length),
  };
  return pieces.flatMap(({ piece, place }) => memberShapes(place.outline, piece.key, middle, place.part === 'skin' ? PENS.thin : PENS.outline));
}

function memberShapes(outline: GateOutline, key: string, middle: { readonly x: number; readonly y: number }, pen: Pen): Shape[] {
  if (outline.kind === 'plate' && outline.corners !== undefined) return ring(outline.corners.map(({ x, y }) => [x, y]), pen, key);
  if (outline.kind === 'plate') return rectangle(pen, outline.left, outline.right, outline.bottom, outline.top, key);
  const { a, b, size, mitred } = outline;
  const r = size / 2;
  const upright = Math.abs(b.y - a.y) > Math.abs(b.x - a.x);
  if (a.x !== b.x && a.y !== b.y) {
    const away = { x: (-(b.y - a.y) * r) / Math.hypot(b.x - a.x, b.y - a.y), y: ((b.x - a.x) * r) / Math.hypot(b.x - a.x, b.y - a.y) };
    return ring([[a.x + away.x, a.y + away.y], [a.x - away.x, a.y - away.y], [b.x - away.x, b.y - away.y], [b.x + away.x, b.y + away.y]], pen, key);
  }
  if (!mitred) return upright ? rectangle(pen, a.x - r, a.x + r, a.y, b.y, key) : rectangle(pen, a.x, b.x, a.y - r, a.y + r, key);
  // The long side lies away from the leaf's middle; the ends run at 45° from there to the short side.
  if (upright) {
    const out = a.x < middle.x ? -r : r;
    return ring([[a.x + out, a.y - r], [a.x - out, a.y + r], [b.x - out, b.y - r], [b.x + out, b.y + r]], pen, key);
  }
  const out = a.y < middle.y ? -r : r;
  return ring([[a.x - r, a.y + out], [a.x + r, a.y - out], [b.x - r, b.y - out], [b.x + r, b.y + out]], pen, key, true);
}

/** A closed outline; a level member leaves its mitres to the uprights, so that no line is drawn twice. */
function ring(corners: readonly (readonly [number, number])[], pen: Pen, key: string, open = false): Shape[] {
  return corners.flatMap(([x, y], i) => {
    const [nx, ny] = corners[(i + 1) % corners.length]!;
    return open && i % 2 === 0 ? [] : [straight(pen, x, y, nx, ny, key)];
  });
}
