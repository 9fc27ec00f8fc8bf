/** A view on the paper: its steel, its title line with scale, units and revision, and a scale bar. */
import { type Curve } from '../base/curve.ts';
import { inches } from '../base/quantity.ts';
import { type SheetPoint, type ViewPoint, sheetPoint } from '../base/points.ts';
import { say } from '../text/index.ts';
import { type Shape, type TitleBlock, type View } from './model.ts';
import { type Kit, PENS, makeText, measureText, printSize } from './kit.ts';
import { type Stroke } from './primitives.ts';
import { lineStroke, toSheet } from './strokes.ts';
import { wrapText } from './wrap.ts';

type Framed = Pick<View, 'at' | 'scale'>;

/** From a view's inches of steel to the paper. */
export const toPaper = (view: Framed, point: ViewPoint): SheetPoint =>
  sheetPoint(view.at.x + point.x * view.scale, view.at.y + point.y * view.scale);

export function shapeStroke(view: Framed, shape: Shape): Stroke {
  const piece = shape.piece === undefined ? {} : { piece: shape.piece };
  if (shape.kind === 'circle') {
    return { kind: 'circle', pen: shape.pen, center: toPaper(view, shape.center), radius: inches(shape.radius * view.scale), ...piece };
  }
  const curve: Curve<ViewPoint> = shape.curve;
  if (curve.kind === 'line') return { kind: 'line', pen: shape.pen, a: toPaper(view, curve.a), b: toPaper(view, curve.b), ...piece };
  return {
    kind: 'arc',
    pen: shape.pen,
    center: toPaper(view, curve.center),
    radius: inches(curve.radius * view.scale),
    start: curve.start,
    sweep: curve.sweep,
    ...piece,
  };
}

const titleOf = (view: Pick<View, 'title' | 'scaleText'>, block: Pick<TitleBlock, 'units' | 'revision'>): string =>
  say('drawings.view.title', { title: view.title, scale: view.scaleText, units: block.units, letter: block.revision });

/** Lengths that a scale bar may have, steel inches, by units. */
const BARS = {
  in: [3, 6, 12, 24, 36, 60, 120, 240, 360, 600, 1200, 2400, 6000, 12000, 24000],
  mm: [50, 100, 200, 500, 1000, 2000, 5000, 10000, 20000, 50000, 100000, 200000, 500000].map((mm) => mm / 25.4),
} as const;

const barOf = (kit: Kit, view: Pick<View, 'scale'>): number => {
  const list = BARS[kit.units];
  return list.find((bar) => bar * view.scale >= 8 * kit.h) ?? list[list.length - 1]!;
};

/** Paper height of a view's title and scale bar. */
export const footHeight = (kit: Kit, view: Pick<View, 'title' | 'scaleText'>, block: TitleBlock, width: number): number =>
  (wrapText(kit, titleOf(view, block), width).length + 1) * kit.pitch + 0.1;

/** Title at the foot of the view's box, left, the scale bar over it. */
export function viewFoot(kit: Kit, view: View, block: TitleBlock): Stroke[] {
  const lines = wrapText(kit, titleOf(view, block), view.box.width);
  const strokes: Stroke[] = lines.map((line, i) =>
    makeText(kit, 'NOTES', line, toSheet({ x: view.box.x, y: view.box.y + kit.down + kit.clear + (lines.length - 1 - i) * kit.pitch }), 'start'),
  );
  const bar = barOf(kit, view);
  // The bar stands on a line of text of its own, in the middle of its figure's height.
  const baseline = view.box.y + lines.length * kit.pitch + kit.down + kit.clear;
  const x0 = view.box.x;
  const x1 = x0 + bar * view.scale;
  const high = 0.6 * kit.h;
  const y = baseline + (kit.up - kit.down) / 2 - high / 2;
  const middle = (x0 + x1) / 2;
  strokes.push(
    { kind: 'fill', layer: 'NOTES', points: [[x0, y], [middle, y], [middle, y + high], [x0, y + high]].map(([x, v]) => sheetPoint(x!, v!)) },
    lineStroke(PENS.note, { x: middle, y }, { x: x1, y }),
    lineStroke(PENS.note, { x: x1, y }, { x: x1, y: y + high }),
    lineStroke(PENS.note, { x: x1, y: y + high }, { x: middle, y: y + high }),
    makeText(kit, 'NOTES', printSize(kit, bar), toSheet({ x: x1 + 2 * kit.clear, y: baseline }), 'start'),
  );
  return strokes;
}

/** Paper width that the foot needs on one line. */
export const footWidth = (kit: Kit, view: Pick<View, 'title' | 'scaleText'>, block: TitleBlock): number => measureText(kit, titleOf(view, block)) + 0.02;
