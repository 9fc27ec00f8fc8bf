/** Boxes and lines on the paper that a text must keep clear of. */
import { type SheetPoint, type Vec, sheetPoint } from '../base/points.ts';
import { type Stroke } from './primitives.ts';
import { type Font } from './font.ts';

export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A rectangle turned about its center. */
export interface TurnedBox {
  readonly cx: number;
  readonly cy: number;
  /** Half sizes along its own axes. */
  readonly hx: number;
  readonly hy: number;
  readonly cos: number;
  readonly sin: number;
}

export interface Segment {
  readonly a: Vec;
  readonly b: Vec;
}

/** What shares less than this of an edge, paper inches, only touches. */
const EDGE = 1e-9;
/** A segment that runs less than this across a pair of sides is along them. */
const LEVEL = 1e-12;

/** The box of a text from the font's own ascent and descent and the sum of its advances, grown by `grow` on every side. */
export function textBox(font: Font, text: Extract<Stroke, { kind: 'text' }>, grow = 0): TurnedBox {
  const em = text.height / font.capHeight;
  const up = font.ascent * em;
  const down = -font.descent * em;
  const start = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? -text.width / 2 : -text.width;
  const cos = Math.cos(text.rotation);
  const sin = Math.sin(text.rotation);
  const lx = start + text.width / 2;
  const ly = (up - down) / 2;
  return {
    cx: text.at.x + lx * cos - ly * sin,
    cy: text.at.y + lx * sin + ly * cos,
    hx: text.width / 2 + grow,
    hy: (up + down) / 2 + grow,
    cos,
    sin,
  };
}

/** The box of an upright rectangle. */
export const rectBox = (rect: Rect): TurnedBox => ({
  cx: rect.x + rect.width / 2,
  cy: rect.y + rect.height / 2,
  hx: rect.width / 2,
  hy: rect.height / 2,
  cos: 1,
  sin: 0,
});

export const growBox = (box: TurnedBox, by: number): TurnedBox => ({ ...box, hx: box.hx + by, hy: box.hy + by });

/** Its corners, in order round. */
export function boxCorners(box: TurnedBox): SheetPoint[] {
  const { cx, cy, hx, hy, cos, sin } = box;
  return [
    [-hx, -hy],
    [hx, -hy],
    [hx, hy],
    [-hx, hy],
  ].map(([x, y]) => sheetPoint(cx + x! * cos - y! * sin, cy + x! * sin + y! * cos));
}

/** The upright rectangle round a turned box. */
export function boxBounds(box: TurnedBox): Rect {
  const w = Math.abs(box.hx * box.cos) + Math.abs(box.hy * box.sin);
  const h = Math.abs(box.hx * box.sin) + Math.abs(box.hy * box.cos);
  return { x: box.cx - w, y: box.cy - h, width: 2 * w, height: 2 * h };
}

/** Whether two boxes share any area (touching edges do not count). Written without inner functions: it is asked at every trial of a text. */
export function boxesMeet(a: TurnedBox, b: TurnedBox): boolean {
  return !(parted(a, b, a.cos, a.sin) || parted(a, b, -a.sin, a.cos) || parted(a, b, b.cos, b.sin) || parted(a, b, -b.sin, b.cos));
}

/** Whether the direction (x, y) parts two boxes. */
function parted(a: TurnedBox, b: TurnedBox, x: number, y: number): boolean {
  return Math.abs((b.cx - a.cx) * x + (b.cy - a.cy) * y) >= reachAlong(a, x, y) + reachAlong(b, x, y) - EDGE;
}

const reachAlong = (box: TurnedBox, x: number, y: number): number =>
  box.hx * Math.abs(box.cos * x + box.sin * y) + box.hy * Math.abs(box.cos * y - box.sin * x);

/** Whether a segment enters a box (touching its edge does not count). */
export const segmentMeetsBox = ({ a, b }: Segment, box: TurnedBox): boolean => lineMeetsBox(a.x, a.y, b.x, b.y, box);

/** The same for the segment from (ax, ay) to (bx, by): what of it is left between the box's two pairs of sides. */
export function lineMeetsBox(ax: number, ay: number, bx: number, by: number, box: TurnedBox): boolean {
  const { cx, cy, cos, sin } = box;
  const px = (ax - cx) * cos + (ay - cy) * sin;
  const py = (ay - cy) * cos - (ax - cx) * sin;
  const dx = (bx - cx) * cos + (by - cy) * sin - px;
  const dy = (by - cy) * cos - (bx - cx) * sin - py;
  const hx = box.hx - EDGE;
  const hy = box.hy - EDGE;
  let from = 0;
  let to = 1;
  if (Math.abs(dx) < LEVEL) {
    if (Math.abs(px) >= hx) return false;
  } else {
    const u = (-hx - px) / dx;
    const v = (hx - px) / dx;
    from = Math.max(from, Math.min(u, v));
    to = Math.min(to, Math.max(u, v));
    if (from >= to) return false;
  }
  if (Math.abs(dy) < LEVEL) return Math.abs(py) < hy;
  const u = (-hy - py) / dy;
  const v = (hy - py) / dy;
  return Math.max(from, Math.min(u, v)) < Math.min(to, Math.max(u, v));
}
