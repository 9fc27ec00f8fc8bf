/** What is wrong with a callout: a leader must end on the steel that it marks. */
import { type Callout, type PlacedView, type Sheet, type Stroke } from '../../core/drafting/primitives.ts';
import { type Point, chords, distanceToSegment, extentOf, within } from './paper-shapes.ts';

/** How far beside an outline a leader may end, paper inches. */
const BESIDE = 0.03;
const SAME = 1e-6;

type Chord = readonly [Point, Point];

export function outlinesByPiece(sheet: Sheet): Map<string, Stroke[]> {
  const out = new Map<string, Stroke[]>();
  for (const item of sheet.primitives) {
    if (!('piece' in item)) continue;
    const list = out.get(item.piece) ?? [];
    list.push(item);
    out.set(item.piece, list);
  }
  return out;
}

/** On the outline, or with the outline on both sides of it, along or across the paper. */
function onPiece(target: Point, lines: readonly Chord[]): boolean {
  if (lines.some(([a, b]) => distanceToSegment(target, a, b) <= BESIDE)) return true;
  const bothSides = (along: (p: Point) => number, across: (p: Point) => number): boolean => {
    const hits = lines.flatMap(([a, b]) => {
      const [u, v] = [across(a) - across(target), across(b) - across(target)];
      if (u * v > 0 || u === v) return [];
      return [along(a) + ((along(b) - along(a)) * u) / (u - v) - along(target)];
    });
    return hits.some((hit) => hit < 0) && hits.some((hit) => hit > 0);
  };
  return bothSides((p) => p.x, (p) => p.y) || bothSides((p) => p.y, (p) => p.x);
}

const standsIn = (view: PlacedView, chord: Chord): boolean => {
  const { x, y, width, height } = view.box;
  return within(extentOf(chord), { x0: x, x1: x + width, y0: y, y1: y + height }, 0.01);
};

export function calloutBreaches(sheet: Sheet, item: Callout, outlines: ReadonlyMap<string, readonly Stroke[]>, printed: ReadonlySet<string>): string[] {
  const name = `callout "${item.text}"`;
  const view = sheet.views.find((one) => one.id === item.view);
  if (view === undefined) return [`${name} stands in no view: ${item.view}`];
  const out: string[] = [];
  if (item.pieces.length !== 0 && item.pieces.length !== item.targets.length) out.push(`${name} has not one target for each piece`);
  if (item.targets.length === 0) out.push(`${name} has no target`);
  const texts = item.strokes.flatMap((stroke) => (stroke.kind === 'text' ? [stroke.text] : []));
  const bubble = texts.some((text) => /^\d+$/.test(text)) && printed.has(item.text);
  if (!texts.includes(item.text) && !bubble) out.push(`${name} does not print its text`);
  const leaders = item.strokes.flatMap((stroke): Chord[] => (stroke.kind === 'line' ? [[stroke.a, stroke.b]] : []));
  const near = (a: Point, b: Point): boolean => Math.hypot(a.x - b.x, a.y - b.y) <= SAME;
  if (!item.targets.some((target) => leaders.some((ends) => ends.some((end) => near(end, target))))) out.push(`${name}: its leader ends at no target`);
  item.targets.forEach((target, i) => {
    const ended = item.strokes.some((stroke) => (stroke.kind === 'dot' && near(stroke.center, target)) || (stroke.kind === 'fill' && near(stroke.points[0]!, target)));
    if (!ended) out.push(`${name}: no dot or arrowhead at its target`);
    if (!leaders.some(([a, b]) => distanceToSegment(target, a, b) <= SAME)) out.push(`${name}: its leader misses its target`);
    const piece = item.pieces[i];
    if (piece === undefined) return;
    const lines = (outlines.get(piece) ?? []).flatMap(chords).filter((chord) => standsIn(view, chord));
    if (lines.length === 0) out.push(`${name}: no outline of ${piece} in its view`);
    else if (!onPiece(target, lines)) out.push(`${name}: its leader ends off ${piece}`);
  });
  return out;
}
