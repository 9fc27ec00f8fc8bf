/** Bars with their cuts, to scale along their length: a heading a section, a row for bars that are cut alike. */
import { type SheetPoint } from '../base/points.ts';
import { type Kit, makeText, measureText, PENS } from './kit.ts';
import { type Rect } from './boxes.ts';
import { type BarChart, type BarHeading, type BarPart, type BarRange, type BarRow } from './model.ts';
import { type Stroke } from './primitives.ts';
import { lineStroke, toSheet } from './strokes.ts';
import { wrapText } from './wrap.ts';

/** Height of a bar in letter heights: its mark stands inside it. */
const BAR = 2.4;
/** A box to tick, and from one to the next, in letter heights. */
const BOX = 1.1;
const BOX_PITCH = 1.7;
/** Paper over a heading, in letter heights. */
const ABOVE = 0.8;
/** Paper between two lines of the hatch, inches. */
const HATCH = 0.09;

const besides = (kit: Kit, { left }: Pick<BarChart, 'left'>): number => left + kit.h;
const boxesIn = (kit: Kit, chart: Pick<BarChart, 'left'>): number => Math.max(1, Math.floor((chart.left + (BOX_PITCH - BOX) * kit.h) / (BOX_PITCH * kit.h)));
const wordsOf = (kit: Kit, chart: Pick<BarChart, 'left' | 'width'>, row: BarRow): string[] => wrapText(kit, row.words, chart.width - besides(kit, chart));

/** Paper height of a row, the gap under it included. */
export function barRowHeight(kit: Kit, chart: Pick<BarChart, 'left' | 'width'>, row: BarRow): number {
  const boxes = Math.ceil(row.count / boxesIn(kit, chart)) * BOX_PITCH * kit.h;
  const words = wordsOf(kit, chart, row).length * kit.pitch;
  return Math.max(row.lines.length * kit.pitch + 0.4 * kit.h + boxes, BAR * kit.h + 2 * kit.clear + words) + 0.8 * kit.h;
}

/** How many bars cut alike may stand in one row of no more than this paper height, one at least: each has its box to tick. */
export function barsInHeight(kit: Kit, chart: Pick<BarChart, 'left'>, lines: number, height: number): number {
  const rows = Math.floor((height - lines * kit.pitch - 1.2 * kit.h) / (BOX_PITCH * kit.h));
  return Math.max(1, rows) * boxesIn(kit, chart);
}

export const barHeadingHeight = (kit: Kit, width: number, heading: BarHeading): number =>
  ABOVE * kit.h + (1 + wrapText(kit, heading.words, width).length) * kit.pitch + 1.2 * kit.h;

export function barChartStrokes(kit: Kit, chart: BarChart): Stroke[] {
  const strokes: Stroke[] = [];
  let top: number = chart.at.y;
  for (const entry of chart.entries) {
    if (entry.kind === 'heading') {
      strokes.push(...headingStrokes(kit, chart, entry, top));
      top -= barHeadingHeight(kit, chart.width, entry);
    } else {
      strokes.push(...rowStrokes(kit, chart, entry, top));
      top -= barRowHeight(kit, chart, entry);
    }
  }
  return strokes;
}

/** The paper that these entries take. */
export function barRangeRect(kit: Kit, { chart, from, to }: BarRange): Rect {
  const high = (entries: BarChart['entries']): number =>
    entries.reduce((sum, entry) => sum + (entry.kind === 'heading' ? barHeadingHeight(kit, chart.width, entry) : barRowHeight(kit, chart, entry)), 0);
  const height = high(chart.entries.slice(from, to));
  return { x: chart.at.x, y: chart.at.y - high(chart.entries.slice(0, to)), width: chart.width, height };
}

function headingStrokes(kit: Kit, { at: { x }, width }: BarChart, { title, words }: BarHeading, upper: number): Stroke[] {
  const top = upper - ABOVE * kit.h;
  const lines = [title, ...wrapText(kit, words, width)];
  const rule = top - kit.pitch - kit.clear;
  return [
    makeText(kit, 'NOTES', title, toSheet({ x, y: top - kit.up - kit.clear }), 'start'),
    lineStroke(PENS.frame, { x, y: rule }, { x: x + width, y: rule }),
    ...lines.slice(1).map((line, index) => makeText(kit, 'NOTES', line, toSheet({ x, y: rule - (index + 1) * kit.pitch + kit.down }), 'start')),
  ];
}

function rowStrokes(kit: Kit, chart: BarChart, row: BarRow, top: number): Stroke[] {
  const strokes: Stroke[] = [];
  const { x } = chart.at;
  row.lines.forEach((line, index) => {
    strokes.push(makeText(kit, 'NOTES', line, toSheet({ x, y: top - kit.up - kit.clear - index * kit.pitch }), 'start'));
  });
  const boxes = top - row.lines.length * kit.pitch - 0.4 * kit.h - kit.clear;
  const across = boxesIn(kit, chart);
  for (let n = 0; n < row.count; n += 1) {
    const left = x + (n % across) * BOX_PITCH * kit.h;
    const upper = boxes - Math.floor(n / across) * BOX_PITCH * kit.h;
    strokes.push(...rectangle(PENS.thin, left, upper - BOX * kit.h, left + BOX * kit.h, upper));
  }
  const start = x + besides(kit, chart);
  const low = top - BAR * kit.h;
  let from = start;
  for (const part of row.parts) {
    const to = from + part.length * chart.scale;
    strokes.push(...partStrokes(kit, part, from, to, low, top));
    from = to;
  }
  wordsOf(kit, chart, row).forEach((line, index) => {
    strokes.push(makeText(kit, 'NOTES', line, toSheet({ x: start, y: low - 2 * kit.clear - kit.up - index * kit.pitch }), 'start'));
  });
  return strokes;
}

function partStrokes(kit: Kit, part: BarPart, from: number, to: number, low: number, top: number): Stroke[] {
  switch (part.kind) {
    case 'kerf':
      return [];
    case 'trim':
      return [{ kind: 'fill', layer: 'STEEL', points: corners(from, low, to, top) }];
    case 'piece': {
      const words = part.words.find((text) => measureText(kit, text) + 4 * kit.clear < to - from);
      const at = toSheet({ x: (from + to) / 2, y: (low + top) / 2 - kit.h / 2 });
      return [...rectangle(PENS.outline, from, low, to, top), ...(words === undefined ? [] : [makeText(kit, 'NOTES', words, at, 'middle')])];
    }
    case 'kept':
      return rectangle(PENS.hidden, from, low, to, top);
    case 'scrap':
      return [...rectangle(PENS.thin, from, low, to, top), ...hatch(from, low, to, top)];
  }
}

const corners = (x0: number, y0: number, x1: number, y1: number): SheetPoint[] =>
  [[x0, y0], [x1, y0], [x1, y1], [x0, y1]].map(([x, y]) => toSheet({ x: x!, y: y! }));

function rectangle(pen: (typeof PENS)[keyof typeof PENS], x0: number, y0: number, x1: number, y1: number): Stroke[] {
  const points = corners(x0, y0, x1, y1);
  return points.map((a, index) => lineStroke(pen, a, points[(index + 1) % points.length]!));
}

/** Lines at 45°, cut off at the edges. */
function hatch(x0: number, y0: number, x1: number, y1: number): Stroke[] {
  const out: Stroke[] = [];
  const high = y1 - y0;
  for (let at = x0 - high + HATCH; at < x1; at += HATCH) {
    const a = Math.max(at, x0);
    const b = Math.min(at + high, x1);
    if (b - a > 0.005) out.push(lineStroke(PENS.thin, { x: a, y: y0 + a - at }, { x: b, y: y0 + b - at }));
  }
  return out;
}
