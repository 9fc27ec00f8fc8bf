/** One page's part of a template: its outline, the lines round it, and how it is laid to the pages beside it. */
import { type Vec } from '../../base/points.ts';
import { boxBounds } from '../../drafting/boxes.ts';
import { boxOf, PENS, type Kit, type TextStroke } from '../../drafting/kit.ts';
import { makeOccupancy } from '../../drafting/occupancy.ts';
import { settle } from '../../drafting/place.ts';
import { type Pen, type Stroke } from '../../drafting/primitives.ts';
import { lineStroke } from '../../drafting/strokes.ts';
import { say } from '../../text/index.ts';
import { clipLine, type Shown } from './clip.ts';
import { textAt } from './template-page.ts';
import { type Tile } from './tiles.ts';
import { type WrapLine } from './wrap-lines.ts';

/** A template as lines and words in inches from the foot of its seam. */
export interface FlatTemplate {
  readonly name: string;
  /** The cut, from seam to seam. */
  readonly cut: readonly Vec[];
  readonly lines: readonly WrapLine[];
}

/** A line on which two pages are laid: across or up, and the letter that both bear. */
interface Match {
  readonly way: 'across' | 'up';
  readonly at: number;
  readonly letter: string;
}

const CUT: Pen = { layer: 'STEEL', weight: 'thin', dash: 'solid' };
const LAID: Pen = { layer: 'HIDDEN', weight: 'thin', dash: 'hidden' };

/** The strokes of a part, its lower left corner at `origin` on the paper. `letters` name its match lines. */
export function tileStrokes(kit: Kit, template: FlatTemplate, column: Tile, row: Tile, origin: Vec, letterOf: (way: Match['way'], at: number) => string): readonly Stroke[] {
  const seen: Shown = { left: column.from, right: column.to, bottom: row.from, top: row.to };
  const place = (p: Vec): Vec => ({ x: origin.x + p.x - seen.left, y: origin.y + p.y - seen.bottom });
  const occupancy = makeOccupancy();
  const strokes: Stroke[] = [];
  const line = (pen: Pen, a: Vec, b: Vec): void => {
    const part = clipLine(a, b, seen);
    if (part === null) return;
    const stroke = lineStroke(pen, place(part.a), place(part.b));
    strokes.push(stroke);
    settle(kit, occupancy, [stroke]);
  };
  const { cut, lines } = template;
  const last = cut[cut.length - 1]!;
  cut.slice(1).forEach((b, i) => { line(CUT, cut[i]!, b); });
  line(CUT, { x: 0, y: 0 }, cut[0]!);
  line(CUT, { x: 0, y: 0 }, { x: last.x, y: 0 });
  line(CUT, { x: last.x, y: 0 }, last);
  const heights = lines.map(({ x }) => heightAt(cut, x));
  lines.slice(1, -1).forEach(({ x }, i) => { line(PENS.center, { x, y: 0 }, { x, y: heights[i + 1]! }); });
  const matches: readonly Match[] = [
    ...ends(column).map((at) => ({ way: 'up' as const, at, letter: letterOf('up', at) })),
    ...ends(row).map((at) => ({ way: 'across' as const, at, letter: letterOf('across', at) })),
  ];
  for (const { way, at } of matches) {
    if (way === 'up') line(LAID, { x: at, y: 0 }, { x: at, y: seen.top });
    else line(LAID, { x: seen.left, y: at }, { x: seen.right, y: at });
  }
  /** Where a word is clear of all lines and words and wholly on this part. */
  const word = (candidates: Iterable<TextStroke>): void => {
    for (const text of candidates) {
      const box = boxOf(kit, text);
      const { x, y, width, height } = boxBounds(box);
      const inside = x >= origin.x && y >= origin.y && x + width <= origin.x + seen.right - seen.left && y + height <= origin.y + seen.top - seen.bottom;
      if (!inside || occupancy.blocked(box)) continue;
      strokes.push(text);
      settle(kit, occupancy, [text]);
      return;
    }
  };
  for (const { way, at, letter } of matches) word(besideMatch(kit, way, at, say('template.match', { letter }), seen, place));
  lines.forEach(({ x, words }) => { word(upright(kit, words, x, place)); });
  word(upright(kit, template.name, kit.pitch + 0.02, place));
  word(overEdge(kit, lines, place));
  return strokes;
}

const ends = ({ before, after }: Tile): readonly number[] => [before, after].filter((at) => at !== null);

/** Height of the cut over a place round the pipe. */
function heightAt(cut: readonly Vec[], x: number): number {
  const i = Math.min(cut.length - 1, Math.max(1, cut.findIndex((point) => point.x >= x)));
  const [a, b] = [cut[i - 1]!, cut[i]!];
  return a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x);
}

/** Words that run up beside an upright line, on its right or else its left, from just over the straight edge. */
function* upright(kit: Kit, words: string, x: number, place: (p: Vec) => Vec): Generator<TextStroke> {
  const clear = kit.clear + 0.012;
  for (const y of [0.08, 0.3, 0.6]) {
    yield textAt(kit, words, place({ x: x + clear + kit.up, y }), 1);
    yield textAt(kit, words, place({ x: x - clear - kit.down, y }), 1);
  }
}

/** Over the straight edge, in the first quarter that has room. */
function* overEdge(kit: Kit, lines: readonly WrapLine[], place: (p: Vec) => Vec): Generator<TextStroke> {
  for (const { x } of lines) yield textAt(kit, say('template.edge-words'), place({ x: x + 2 * kit.pitch, y: kit.clear + 0.012 + kit.down }));
}

function* besideMatch(kit: Kit, way: Match['way'], at: number, words: string, seen: Shown, place: (p: Vec) => Vec): Generator<TextStroke> {
  if (way === 'up') {
    for (let y = seen.bottom + 0.08; y < seen.top; y += 0.2) {
      for (const x of [at + kit.clear + 0.012 + kit.up, at - kit.clear - 0.012 - kit.down]) yield textAt(kit, words, place({ x, y }), 1);
    }
    return;
  }
  for (let x = seen.left + 0.08; x < seen.right; x += 0.2) {
    for (const y of [at + kit.clear + 0.012 + kit.down, at - kit.clear - 0.012 - kit.up]) yield textAt(kit, words, place({ x, y }));
  }
}
