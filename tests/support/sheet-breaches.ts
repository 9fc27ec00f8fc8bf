/**
 * What a drafted drawing breaks of the drawings contract, one sentence each; an empty list is a clean drawing.
 * Written apart from the code that places things, from the font's metrics and the figures on the sheet alone.
 */
import { type Font } from '../../core/drafting/font.ts';
import { type Sheet, type Stroke, DASHES, LAYERS, LINE_WEIGHT_MM, strokesOf } from '../../core/drafting/primitives.ts';
import { calloutBreaches, outlinesByPiece } from './callout-breaches.ts';
import { dimensionBreaches } from './dimension-breaches.ts';
import { type Extent, type Point, type TextStroke, advanceWidth, convexMeet, extentOf, extentsMeet, strokeMeetsBox, strokePoints, textCorners, within } from './paper-shapes.ts';

/** Clear paper round a text (drawings contract). */
const CLEAR = 0.02;
/** The least text that any paper may bear, inches (drawings contract). */
const LEAST_TEXT = 0.1;
const KEEP_OFF: readonly string[] = ['SIZES', 'MARKS', 'NOTES', 'FRAME'];

interface Boxed {
  readonly text: TextStroke;
  readonly box: readonly Point[];
  readonly extent: Extent;
}

export function sheetBreaches(sheet: Sheet, font: Font): string[] {
  const strokes = strokesOf(sheet.primitives);
  const lost = strokes.filter((stroke) => !finite(stroke));
  const sound = strokes.filter((stroke) => finite(stroke));
  const boxed = boxedTexts(sound, font);
  const out = [
    ...lost.map((stroke) => `a ${stroke.kind} has a coordinate that is no number`),
    ...touching(sound, boxed, font),
    ...sizes(sheet, font, boxed),
    ...offPaper(sheet, sound, font),
    ...drawnWrong(sound),
    ...titles(sheet, sound, boxed),
  ];
  const outlines = outlinesByPiece(sheet);
  const printed = new Set(boxed.map((one) => one.text.text));
  for (const item of sheet.primitives) {
    if (item.kind === 'dimension') out.push(...dimensionBreaches(sheet, item));
    if (item.kind === 'callout') out.push(...calloutBreaches(sheet, item, outlines, printed));
  }
  return out.map((breach) => `${sheet.number}: ${breach}`);
}

/** The texts that touch a text or a line, of any picture. */
export const textBreaches = (strokes: readonly Stroke[], font: Font): string[] => touching(strokes, boxedTexts(strokes, font), font);

function boxedTexts(strokes: readonly Stroke[], font: Font): Boxed[] {
  return strokes.flatMap((stroke) => {
    if (stroke.kind !== 'text') return [];
    const box = textCorners(font, stroke, CLEAR);
    return [{ text: stroke, box, extent: extentOf(box) }];
  });
}

function finite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value === 'object' && value !== null) return Object.values(value).every(finite);
  return true;
}

const where = (p: Point): string => `(${p.x.toFixed(2)}, ${p.y.toFixed(2)})`;
const layerOf = (stroke: Stroke): string => ('pen' in stroke ? stroke.pen.layer : stroke.layer);

function touching(strokes: readonly Stroke[], boxed: readonly Boxed[], font: Font): string[] {
  const out: string[] = [];
  const columns = new Map<number, Boxed[]>();
  const columnsOf = (extent: Extent): number[] =>
    Array.from({ length: Math.floor(extent.x1) - Math.floor(extent.x0) + 1 }, (_, i) => Math.floor(extent.x0) + i);
  const near = (extent: Extent): Boxed[] => {
    const found = new Set(columnsOf(extent).flatMap((column) => columns.get(column) ?? []));
    return [...found].filter((one) => extentsMeet(one.extent, extent));
  };
  for (const one of boxed) {
    for (const other of near(one.extent)) {
      if (convexMeet(one.box, other.box)) out.push(`text "${one.text.text}" touches text "${other.text.text}" at ${where(one.text.at)}`);
    }
    for (const column of columnsOf(one.extent)) columns.set(column, [...(columns.get(column) ?? []), one]);
  }
  for (const stroke of strokes) {
    if (stroke.kind === 'text' || !KEEP_OFF.includes(layerOf(stroke))) continue;
    for (const one of near(grown(extentOf(strokePoints(stroke, font))))) {
      if (strokeMeetsBox(stroke, one.box)) out.push(`text "${one.text.text}" touches a ${stroke.kind} of ${layerOf(stroke)} at ${where(one.text.at)}`);
    }
  }
  return out;
}

/** A line that is straight up has no width of its own to meet a box with. */
const grown = (extent: Extent): Extent => ({ x0: extent.x0 - 1e-6, x1: extent.x1 + 1e-6, y0: extent.y0 - 1e-6, y1: extent.y1 + 1e-6 });

function sizes(sheet: Sheet, font: Font, boxed: readonly Boxed[]): string[] {
  const least = Math.max(LEAST_TEXT, sheet.paper.text);
  return boxed.flatMap(({ text }) => {
    const out: string[] = [];
    if (text.height < least - 1e-9) out.push(`text "${text.text}" is ${String(text.height)} high, less than ${String(least)}`);
    if (Math.abs(text.width - advanceWidth(font, text.text, text.height)) > 1e-6) out.push(`text "${text.text}" has not the font's width`);
    return out;
  });
}

function offPaper(sheet: Sheet, strokes: readonly Stroke[], font: Font): string[] {
  const paper: Extent = { x0: 0, x1: sheet.paper.width, y0: 0, y1: sheet.paper.height };
  const border = strokes.flatMap((stroke) => (stroke.kind === 'line' && stroke.pen.layer === 'FRAME' ? [stroke.a, stroke.b] : []));
  const inside = border.length === 0 ? paper : extentOf(border);
  const out: string[] = [];
  for (const stroke of strokes) {
    const extent = extentOf(strokePoints(stroke, font));
    if (!within(extent, paper)) out.push(`a ${stroke.kind}${stroke.kind === 'text' ? ` "${stroke.text}"` : ''} leaves the paper`);
    else if (stroke.kind === 'text' && !within(extent, inside)) out.push(`text "${stroke.text}" leaves the border`);
  }
  for (const item of sheet.primitives) {
    if (item.kind !== 'dimension') continue;
    for (const [what, point] of [['from', item.from], ['to', item.to], ['line', item.line], ['textAt', item.textAt]] as const) {
      if (what === 'from' && item.measure === 'radius' && finite(point)) continue;
      if (!finite(point) || !within(extentOf([point]), paper)) out.push(`dimension "${item.text}": its ${what} is not on the paper`);
    }
  }
  return out;
}

function drawnWrong(strokes: readonly Stroke[]): string[] {
  const out: string[] = [];
  for (const stroke of strokes) {
    if (!(LAYERS as readonly string[]).includes(layerOf(stroke))) out.push(`unknown layer ${layerOf(stroke)}`);
    if (stroke.kind === 'fill' && stroke.points.length === 3 && !isArrowhead(stroke.points)) out.push('an arrowhead is not three times as long as wide');
    if (stroke.kind === 'fill' && stroke.points.length !== 3 && stroke.points.length !== 4) out.push('a fill is neither arrowhead nor bar');
    if (!('pen' in stroke)) continue;
    if (!Object.hasOwn(LINE_WEIGHT_MM, stroke.pen.weight)) out.push(`unknown line weight ${stroke.pen.weight}`);
    if (!Object.hasOwn(DASHES, stroke.pen.dash)) out.push(`unknown dash ${stroke.pen.dash}`);
    if (stroke.pen.layer === 'HIDDEN' && stroke.pen.dash !== 'hidden') out.push('a hidden line is not dashed');
    if (stroke.pen.layer === 'CENTER' && stroke.pen.dash !== 'center') out.push('a centerline is not chained');
  }
  return out;
}

function isArrowhead(points: readonly Point[]): boolean {
  const [tip, b, c] = points as readonly [Point, Point, Point];
  const long = Math.hypot((b.x + c.x) / 2 - tip.x, (b.y + c.y) / 2 - tip.y);
  const wide = Math.hypot(b.x - c.x, b.y - c.y);
  const even = Math.abs(Math.hypot(b.x - tip.x, b.y - tip.y) - Math.hypot(c.x - tip.x, c.y - tip.y)) < 1e-9;
  return even && wide > 0 && Math.abs(long / wide - 3) < 1e-6;
}

/** Title and scale in the view's own box, wrapped or not, and a scale bar, so that the view can be read by itself. */
function titles(sheet: Sheet, strokes: readonly Stroke[], boxed: readonly Boxed[]): string[] {
  const squeeze = (text: string): string => text.replace(/\s+/g, '');
  return sheet.views.flatMap((view) => {
    const { x, y, width, height } = view.box;
    const room: Extent = { x0: x, x1: x + width, y0: y, y1: y + height };
    const words = boxed
      .filter(({ text, extent }) => text.layer === 'NOTES' && within(extent, room, CLEAR + 1e-6))
      .sort((a, b) => b.text.at.y - a.text.at.y || a.text.at.x - b.text.at.x)
      .map(({ text }) => squeeze(text.text))
      .join('');
    const out: string[] = [];
    if (!words.includes(squeeze(view.title))) out.push(`view "${view.title}" has not its title in its box`);
    if (!words.includes(squeeze(view.scaleText))) out.push(`view "${view.title}" has not its scale in its box`);
    const bar = strokes.some((stroke) => stroke.kind === 'fill' && stroke.points.length === 4 && within(extentOf(stroke.points), room));
    if (!bar) out.push(`view "${view.title}" has no scale bar in its box`);
    return out;
  });
}
