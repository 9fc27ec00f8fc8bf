/** Marks in one row above the steel, spread so that none touch; each leader drops plumb through its pieces, a dot on each. */
import { type ViewPoint, viewPoint } from '../base/points.ts';
import { type Band } from './model.ts';
import { type Kit, PENS, makeText, measureText } from './kit.ts';
import { type Callout, type Stroke } from './primitives.ts';
import { spread } from './spread.ts';
import { dotStroke, lineStroke, toSheet } from './strokes.ts';

/** Radius of a leader's dot, paper inches. */
export const DOT = 0.02;

const rise = (kit: Kit): number => 3 * kit.h;

/** Paper inches that a band takes above the steel. */
export const bandHeight = (kit: Kit): number => 0.8 * kit.h + rise(kit) + kit.up + kit.down + 3 * kit.clear;

/** Paper inches that a mark takes in the row. */
export const bandWidth = (kit: Kit, text: string): number => measureText(kit, text) + 2 * kit.clear + 0.4 * kit.h;

export function bandCallouts(
  kit: Kit,
  view: string,
  band: Band,
  place: (point: ViewPoint) => { readonly x: number; readonly y: number },
  range: readonly [number, number],
): Callout[] {
  const labels = [...band.labels].sort((a, b) => a.x - b.x);
  const anchors = labels.map((label) => place(viewPoint(label.x, band.top)).x);
  const middles = spread(anchors, labels.map((label) => bandWidth(kit, label.text)), range);
  const top = place(viewPoint(0, band.top)).y;
  return labels.map((label, i) => {
    const x = anchors[i]!;
    const elbow = { x, y: top + 0.8 * kit.h };
    const foot = { x: middles[i]!, y: elbow.y + rise(kit) };
    const targets = label.targets.map((target) => toSheet(place(viewPoint(label.x, target.y))));
    const lowest = targets.reduce((low, target) => Math.min(low, target.y), Infinity);
    const strokes: Stroke[] = [
      lineStroke(PENS.mark, foot, elbow),
      lineStroke(PENS.mark, elbow, { x, y: lowest }),
      ...targets.map((target) => dotStroke('MARKS', target, DOT)),
      makeText(kit, 'MARKS', label.text, toSheet({ x: foot.x, y: foot.y + kit.down + 1.5 * kit.clear }), 'middle'),
    ];
    return { kind: 'callout', view, text: label.text, pieces: label.targets.map((target) => target.piece), targets, strokes };
  });
}
