/** Shapes on the paper for checking drawings: written apart from the code that places texts, so that it can hold that code to account. */
import { type Font } from '../../core/drafting/font.ts';
import { type Stroke } from '../../core/drafting/primitives.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}
export type TextStroke = Extract<Stroke, { kind: 'text' }>;
type ArcLike = Pick<Extract<Stroke, { kind: 'arc' }>, 'center' | 'radius' | 'start' | 'sweep'>;

/** Overlaps smaller than this are rounding. */
const NOISE = 1e-7;
const TURN = 2 * Math.PI;

/** Width of a text from the font's advances at its cap height. */
export function advanceWidth(font: Font, text: string, height: number): number {
  const units = [...text].reduce((sum, char) => sum + font.advance(char.codePointAt(0)!), 0);
  return units * (height / font.capHeight);
}

/** Corners of a text's box, counter-clockwise, grown on every side. */
export function textCorners(font: Font, text: TextStroke, grow: number): Point[] {
  const size = text.height / font.capHeight;
  const width = advanceWidth(font, text.text, text.height);
  const left = { start: 0, middle: -width / 2, end: -width }[text.anchor];
  const [x0, x1] = [left - grow, left + width + grow];
  const [y0, y1] = [font.descent * size - grow, font.ascent * size + grow];
  const [c, s] = [Math.cos(text.rotation), Math.sin(text.rotation)];
  const corners: readonly (readonly [number, number])[] = [[x0, y0], [x1, y0], [x1, y1], [x0, y1]];
  return corners.map(([x, y]) => ({ x: text.at.x + x * c - y * s, y: text.at.y + x * s + y * c }));
}

export interface Extent {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}
export const extentOf = (points: readonly Point[]): Extent => ({
  x0: Math.min(...points.map((p) => p.x)),
  x1: Math.max(...points.map((p) => p.x)),
  y0: Math.min(...points.map((p) => p.y)),
  y1: Math.max(...points.map((p) => p.y)),
});
export const extentsMeet = (a: Extent, b: Extent): boolean => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;
export const within = (inner: Extent, outer: Extent, slack = NOISE): boolean =>
  inner.x0 >= outer.x0 - slack && inner.x1 <= outer.x1 + slack && inner.y0 >= outer.y0 - slack && inner.y1 <= outer.y1 + slack;

const onArc = (arc: ArcLike, angle: number): Point => ({
  x: arc.center.x + arc.radius * Math.cos(angle),
  y: arc.center.y + arc.radius * Math.sin(angle),
});
const arcHas = (arc: ArcLike, angle: number): boolean => {
  const ahead = ((((angle - arc.start) * Math.sign(arc.sweep || 1)) % TURN) + TURN) % TURN;
  return ahead <= Math.abs(arc.sweep);
};
const wholeTurn = (stroke: Extract<Stroke, { kind: 'circle' | 'dot' }>): ArcLike =>
  ({ center: stroke.center, radius: stroke.radius, start: 0, sweep: TURN }) as ArcLike;

/** Points whose extent is the stroke's own. A text's are its bare box. */
export function strokePoints(stroke: Stroke, font: Font): readonly Point[] {
  switch (stroke.kind) {
    case 'line': return [stroke.a, stroke.b];
    case 'fill': return stroke.points;
    case 'text': return textCorners(font, stroke, 0);
    case 'arc':
    case 'circle':
    case 'dot': {
      const arc = stroke.kind === 'arc' ? stroke : wholeTurn(stroke);
      const quarters = [0, 1, 2, 3].map((q) => (q * Math.PI) / 2).filter((angle) => arcHas(arc, angle));
      return [arc.start, arc.start + arc.sweep, ...quarters].map((angle) => onArc(arc, angle));
    }
  }
}

/** Whether two convex outlines (a segment is one of two points) share more than rounding: no line parts them. */
export function convexMeet(p: readonly Point[], q: readonly Point[]): boolean {
  for (const shape of [p, q]) {
    for (const [i, a] of shape.entries()) {
      const b = shape[(i + 1) % shape.length]!;
      const size = Math.hypot(b.x - a.x, b.y - a.y);
      if (size === 0) continue;
      for (const [nx, ny] of [[(b.y - a.y) / size, (a.x - b.x) / size], [(b.x - a.x) / size, (b.y - a.y) / size]] as const) {
        const reach = (points: readonly Point[]): number[] => points.map((v) => v.x * nx + v.y * ny);
        const [u, v] = [reach(p), reach(q)];
        if (Math.max(...u) <= Math.min(...v) + NOISE || Math.max(...v) <= Math.min(...u) + NOISE) return false;
      }
    }
  }
  return true;
}

const inConvex = (box: readonly Point[], p: Point): boolean =>
  box.every((a, i) => {
    const b = box[(i + 1) % box.length]!;
    return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) > NOISE;
  });

/** Where a circle's line crosses a segment, as angles at its center. */
function crossAngles(arc: ArcLike, a: Point, b: Point): number[] {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const [fx, fy] = [a.x - arc.center.x, a.y - arc.center.y];
  const [qa, qb, qc] = [dx * dx + dy * dy, 2 * (fx * dx + fy * dy), fx * fx + fy * fy - arc.radius * arc.radius];
  const under = qb * qb - 4 * qa * qc;
  if (qa === 0 || under <= 0) return [];
  return [-1, 1]
    .map((sign) => (-qb + sign * Math.sqrt(under)) / (2 * qa))
    .filter((t) => t >= 0 && t <= 1)
    .map((t) => Math.atan2(fy + t * dy, fx + t * dx));
}

export const distanceToSegment = (p: Point, a: Point, b: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const size = dx * dx + dy * dy;
  const t = size === 0 ? 0 : Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / size));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
};

/** Whether a stroke that is no text enters a text's box. Arcs are taken as arcs. */
export function strokeMeetsBox(stroke: Exclude<Stroke, { kind: 'text' }>, box: readonly Point[]): boolean {
  switch (stroke.kind) {
    case 'line': return convexMeet([stroke.a, stroke.b], box);
    case 'fill': return convexMeet(stroke.points, box);
    case 'dot':
      return inConvex(box, stroke.center) || box.some((a, i) => distanceToSegment(stroke.center, a, box[(i + 1) % 4]!) < stroke.radius - NOISE);
    case 'arc':
    case 'circle': {
      const arc = stroke.kind === 'arc' ? stroke : wholeTurn(stroke);
      if (inConvex(box, onArc(arc, arc.start)) || inConvex(box, onArc(arc, arc.start + arc.sweep))) return true;
      return box.some((a, i) => crossAngles(arc, a, box[(i + 1) % 4]!).some((angle) => arcHas(arc, angle)));
    }
  }
}

/** A stroke as short straight parts, for distances to outlines. */
export function chords(stroke: Stroke): (readonly [Point, Point])[] {
  if (stroke.kind === 'line') return [[stroke.a, stroke.b]];
  if (stroke.kind !== 'arc' && stroke.kind !== 'circle') return [];
  const arc = stroke.kind === 'arc' ? stroke : wholeTurn(stroke);
  const steps = Math.max(16, Math.ceil(Math.abs(arc.sweep) * 32));
  const at = (i: number): Point => onArc(arc, arc.start + (arc.sweep * i) / steps);
  return Array.from({ length: steps }, (_, i) => [at(i), at(i + 1)] as const);
}
