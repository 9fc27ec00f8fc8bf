/** The elementary weld symbols of AWS A2.4 (flare symbols from memory of that standard), as strokes on one side of the reference line. */
import { inches, radians } from '../base/quantity.ts';
import { type Vec } from '../base/points.ts';
import { type Kit, PENS } from './kit.ts';
import { type WeldKind } from './model.ts';
import { type Stroke } from './primitives.ts';
import { lineStroke, toSheet } from './strokes.ts';

/** How far a symbol stands off the reference line, in letter heights. */
const TALL = 1.4;
/** Between the two lines of a groove without a preparation, and between the two arcs of a flare, in letter heights. */
const APART = 0.6;
const NECK = 0.2;

/** Paper width of a symbol. */
export function glyphWidth(kit: Kit, kind: WeldKind): number {
  switch (kind) {
    case 'fillet':
      return TALL * kit.h;
    case 'square':
      return APART * kit.h;
    case 'flare-bevel':
      return (NECK + TALL) * kit.h;
    case 'flare-vee':
      return (NECK + 2 * TALL) * kit.h;
  }
}

/** A symbol whose left edge stands at `at` on the reference line; `up` is 1 above it and -1 below. The upright leg is always on the left. */
export function glyphStrokes(kit: Kit, kind: WeldKind, at: Vec, up: 1 | -1): Stroke[] {
  const pen = PENS.note;
  const tall = TALL * kit.h;
  const upright = (x: number): Stroke => lineStroke(pen, { x, y: at.y }, { x, y: at.y + up * tall });
  /** A quarter of a circle that leaves the reference line upright at `x` and flares to the left (-1) or right (1). */
  const flare = (x: number, way: 1 | -1): Stroke => ({
    kind: 'arc', pen, center: toSheet({ x: x + way * tall, y: at.y }), radius: inches(tall),
    start: radians(way > 0 ? Math.PI : 0), sweep: radians((-way * up * Math.PI) / 2),
  });
  switch (kind) {
    case 'fillet':
      return [upright(at.x), lineStroke(pen, { x: at.x, y: at.y + up * tall }, { x: at.x + tall, y: at.y })];
    case 'square':
      return [upright(at.x), upright(at.x + APART * kit.h)];
    case 'flare-bevel':
      return [upright(at.x), flare(at.x + NECK * kit.h, 1)];
    case 'flare-vee':
      return [flare(at.x + tall, -1), flare(at.x + tall + NECK * kit.h, 1)];
  }
}
