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

/** Whether two boxes share any area (touching edges do not count). */
export function boxesMeet(a: TurnedBox, b: TurnedBox): boolean {
  const dx = b.cx - a.cx;
  const dy = b.cy - a.cy;
  const axes: readonly (readonly [number, number])[] = [
    [a.cos, a.sin],
    [-a.sin, a.cos],
    [b.cos, b.sin],
    [-b.sin, b.cos],
  ];
  for (const [x, y] of axes) {
    const reach = (box: TurnedBox): number =>
      box.hx * Math.abs(box.cos * x + box.sin * y) + box.hy * Math.abs(box.cos * y - box.sin * x);
    if (Math.abs(dx * x + dy * y) >= reach(a) + reach(b) - 1e-9) return false;
  }
  return true;
}

/** Whether a segment enters a box (touching its edge does not count). */
export function segmentMeetsBox(segment: Segment, box: TurnedBox): boolean {
  const local = (p: Vec): readonly [number, number] => {
    const x = p.x - box.cx;
    const y = p.y - box.cy;
    return [x * box.cos + y * box.sin, y * box.cos - x * box.sin];
  };
  const [ax, ay] = local(segment.a);
  const [bx, by] = local(segment.b);
  let t0 = 0;
  let t1 = 1;
  for (const [p, d, h] of [
    [ax, bx - ax, box.hx - 1e-9],
    [ay, by - ay, box.hy - 1e-9],
  ] as const) {
    if (Math.abs(d) < 1e-12) {
      if (Math.abs(p) >= h) return false;
      continue;
    }
    const u = (-h - p) / d;
    const v = (h - p) / d;
    t0 = Math.max(t0, Math.min(u, v));
    t1 = Math.min(t1, Math.max(u, v));
    if (t0 >= t1) return false;
  }
  return true;
}
