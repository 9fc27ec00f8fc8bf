/** Running dimensions: positions along one line from one datum, each measured from it, texts spread so that none touch. */
import { inches, radians } from '../base/quantity.ts';
import { type Vec, add, scale } from '../base/points.ts';
import { type Kit, PENS, boxOf, makeText, printSize } from './kit.ts';
import { type Dimension, type Stroke } from './primitives.ts';
import { spread } from './spread.ts';
import { arrowhead, lineStroke, toSheet } from './strokes.ts';

export interface RunningInput {
  readonly view: string;
  readonly along: 'x' | 'y';
  readonly datum: Vec;
  readonly at: readonly Vec[];
  /** Steel inches from the datum, by position. */
  readonly values: readonly number[];
  /** Paper inches from the datum to the dimension line: below it (x) or to its left (y). */
  readonly line: number;
  /** Where the texts may spread to, along the line. */
  readonly range: readonly [number, number];
}

/** Paper inches between the dimension line and the texts: room for the witness lines to jog. */
const jogOf = (kit: Kit): number => 1.6 * kit.h;

/** How far a running dimension reaches from its datum, `line` included. */
export const runningDepth = (kit: Kit, line: number, longest: number): number => line + jogOf(kit) + longest + 3 * kit.clear;

/** The datum's own zero with its witness line, and a dimension for each position. */
export function runningDimensions(kit: Kit, input: RunningInput): { readonly zero: Stroke[]; readonly dimensions: Dimension[] } {
  const across = input.along === 'x';
  // For x the line lies below and texts read upward; for y it lies to the left and texts read across.
  const away: Vec = across ? { x: 0, y: -1 } : { x: -1, y: 0 };
  const run: Vec = across ? { x: 1, y: 0 } : { x: 0, y: 1 };
  const along = (p: Vec): number => (across ? p.x : p.y);
  const base = across ? input.datum.y - input.line : input.datum.x - input.line;
  const onLine = (s: number): Vec => (across ? { x: s, y: base } : { x: base, y: s });
  const all = [input.datum, ...input.at];
  const size = kit.up + kit.down + 2 * kit.clear + 0.004;
  const middles = spread(all.map(along), all.map(() => size), input.range);
  const texts = ['0', ...input.values.map((value) => printSize(kit, value))];
  const drawnAt = (i: number): Stroke[] => {
    const s = along(all[i]!);
    const start = add(all[i]!, scale(away, kit.gap));
    const corner = onLine(s);
    const turned = add(onLine(middles[i]!), scale(away, jogOf(kit)));
    const strokes: Stroke[] = [];
    const reach = across ? start.y - corner.y : start.x - corner.x;
    if (reach > 0) strokes.push(lineStroke(PENS.size, start, corner));
    strokes.push(lineStroke(PENS.size, corner, turned));
    const shift = (kit.up - kit.down) / 2;
    const end = add(turned, scale(away, 2 * kit.clear));
    const at = across ? { x: end.x + shift, y: end.y } : { x: end.x, y: end.y - shift };
    strokes.push(makeText(kit, 'SIZES', texts[i]!, toSheet(at), 'end', across ? radians(Math.PI / 2) : 0));
    return strokes;
  };
  const dimensions = input.at.map((point, k): Dimension => {
    const i = k + 1;
    const s = along(point);
    const before = onLine(along(all[i - 1]!));
    const here = onLine(s);
    const strokes: Stroke[] = [lineStroke(PENS.size, before, here), arrowhead('SIZES', here, run, kit.arrow), ...drawnAt(i)];
    const text = strokes.find((stroke) => stroke.kind === 'text')!;
    const box = boxOf(kit, text);
    return {
      kind: 'dimension', measure: 'linear', view: input.view,
      from: toSheet(input.datum), to: toSheet(point), center: null, line: toSheet(here), rotation: radians(across ? 0 : Math.PI / 2),
      value: inches(input.values[k]!), text: texts[i]!, textAt: toSheet({ x: box.cx, y: box.cy }), chained: false, strokes,
    };
  });
  return { zero: drawnAt(0), dimensions };
}
