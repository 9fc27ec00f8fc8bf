/** Small figures that dimensions, callouts and views are made of. */
import { type Inches, inches } from '../base/quantity.ts';
import { type SheetPoint, type Vec, add, leftOf, scale, sheetPoint } from '../base/points.ts';
import { type LayerName, type Pen, type Stroke } from './primitives.ts';

export const toSheet = (v: Vec): SheetPoint => sheetPoint(v.x, v.y);

export const lineStroke = (pen: Pen, a: Vec, b: Vec, piece?: string): Stroke =>
  piece === undefined ? { kind: 'line', pen, a: toSheet(a), b: toSheet(b) } : { kind: 'line', pen, a: toSheet(a), b: toSheet(b), piece };

/** An arrowhead three times as long as it is wide (ASME Y14.2), its point at `tip`, pointing along the unit vector `along`. */
export function arrowhead(layer: LayerName, tip: Vec, along: Vec, length: number): Extract<Stroke, { kind: 'fill' }> {
  const back = add(tip, scale(along, -length));
  const half = scale(leftOf(along), length / 6);
  return { kind: 'fill', layer, points: [toSheet(tip), toSheet(add(back, half)), toSheet(add(back, scale(half, -1)))] };
}

export const dotStroke = (layer: LayerName, center: Vec, radius: number): Stroke => ({
  kind: 'dot',
  layer,
  center: toSheet(center),
  radius: inches(radius),
});

/**
 * The segments that a text must keep off, as figures: ax, ay, bx, by of each, one after another. Chords of an arc are close enough at a
 * twentieth of an inch.
 */
export function segmentsOf(strokes: readonly Stroke[]): number[] {
  const out: number[] = [];
  for (const stroke of strokes) {
    switch (stroke.kind) {
      case 'line':
        out.push(stroke.a.x, stroke.a.y, stroke.b.x, stroke.b.y);
        break;
      case 'arc':
        addChords(out, stroke.center, stroke.radius, stroke.start, stroke.sweep);
        break;
      case 'circle':
        addChords(out, stroke.center, stroke.radius, 0, 2 * Math.PI);
        break;
      case 'fill':
        addRing(out, stroke.points);
        break;
      case 'dot':
        addRing(out, squareRound(stroke.center, stroke.radius));
        break;
      case 'text':
        break;
    }
  }
  return out;
}

function addRing(out: number[], points: readonly Vec[]): void {
  let before = points[points.length - 1]!;
  for (const point of points) {
    out.push(before.x, before.y, point.x, point.y);
    before = point;
  }
}

/** A dot is so small that the square round it will do; unlike its chords it leaves nothing of the dot out. */
const squareRound = ({ x, y }: Vec, r: number): Vec[] => [{ x: x - r, y: y - r }, { x: x + r, y: y - r }, { x: x + r, y: y + r }, { x: x - r, y: y + r }];

function addChords(out: number[], center: Vec, radius: Inches, start: number, sweep: number): void {
  // A small circle needs chords by its turn: by length alone they would cut in by more than a text's spare clear paper.
  const byTurn = Math.ceil(Math.abs(sweep) / 0.35);
  const steps = Math.max(4, byTurn, Math.min(256, Math.ceil((radius * Math.abs(sweep)) / 0.15)));
  let x = center.x + radius * Math.cos(start);
  let y = center.y + radius * Math.sin(start);
  for (let i = 1; i <= steps; i += 1) {
    const angle = start + (sweep * i) / steps;
    const nextX = center.x + radius * Math.cos(angle);
    const nextY = center.y + radius * Math.sin(angle);
    out.push(x, y, nextX, nextY);
    x = nextX;
    y = nextY;
  }
}
