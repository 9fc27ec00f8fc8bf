/**
 * The one drafting step: a drawing's plain data to primitives on the paper. Dimensions that are asked for stand first, then marks
 * in bands, then what finds its own place; nothing may touch a text. What found no place is handed back, never dropped in silence.
 */
import { type Dimension, type Sheet, type Stroke } from './primitives.ts';
import { type Rect } from './boxes.ts';
import { barChartStrokes, barRangeRect } from './bars.ts';
import { bandCallouts } from './band.ts';
import { fitCloud, trianglePlaces } from './cloud.ts';
import { bubblePlaces } from './callout.ts';
import { frameStrokes, roomInside } from './frame.ts';
import { type Font } from './font.ts';
import { type Kit, makeKit } from './kit.ts';
import { type CalloutSpec, type DimensionSpec, type Drawing, type TitleBlock, type View, type WeldSpec } from './model.ts';
import { runningDimensions } from './running.ts';
import { type Stand, makeStand } from './stand.ts';
import { columnWidths, noteHeight, noteStrokes, rowsIn, tableHeight, tableStrokes } from './table.ts';
import { viewPoint } from '../base/points.ts';
import { toPaper, viewFoot } from './view.ts';
import { say } from '../text/index.ts';

type Unplaced = CalloutSpec | DimensionSpec | WeldSpec;

export interface Drafted {
  readonly sheet: Sheet;
  /** What found no room: the builder takes a larger paper, or splits the drawing. */
  readonly unplaced: readonly Unplaced[];
}

/** Drafts one drawing. Never throws for a crowded one: see `unplaced`. */
export function draft(font: Font, block: TitleBlock, drawing: Drawing): Drafted {
  const { kit, stand } = begin(font, block, drawing);
  const unplaced: Unplaced[] = [];
  for (const { view, spec } of dimensionsOf(drawing, true)) if (!stand.dimension(view, spec)) unplaced.push(spec);
  for (const { view, spec } of weldsOf(drawing, true)) if (!stand.weld(view, spec)) unplaced.push(spec);
  const crowded = calloutsOf(drawing).filter(({ view, spec }) => !stand.callout(view, spec) && spec.optional !== true);
  unplaced.push(...bubbles(kit, drawing, crowded, stand));
  for (const { view, spec } of weldsOf(drawing, false)) stand.weld(view, spec);
  for (const { view, spec } of dimensionsOf(drawing, false)) stand.dimension(view, spec);
  clouds(kit, block, drawing, stand);
  const { number, title, file, paper, scale } = drawing;
  const views = drawing.views.map((view) => ({ id: view.id, title: view.title, scale: view.scale, scaleText: view.scaleText, at: view.at, box: view.box }));
  return { sheet: { number, title, file, paper, scale, units: block.units, views, primitives: stand.primitives }, unplaced };
}

/** Whether a drawing drafted now would leave nothing unplaced. Ends at the first that finds no room, and tries nothing that may be left out. */
export function hasRoom(font: Font, block: TitleBlock, drawing: Drawing): boolean {
  const { kit, stand } = begin(font, block, drawing);
  for (const { view, spec } of dimensionsOf(drawing, true)) if (!stand.dimension(view, spec)) return false;
  for (const { view, spec } of weldsOf(drawing, true)) if (!stand.weld(view, spec)) return false;
  const words = calloutsOf(drawing);
  const count = 1 + words.findLastIndex(({ spec }) => spec.optional !== true);
  const crowded: Word[] = [];
  for (const word of words.slice(0, count)) {
    if (stand.callout(word.view, word.spec) || word.spec.optional === true) continue;
    if (drawing.overflow === undefined) return false;
    crowded.push(word);
  }
  if (crowded.length === 0) return true;
  for (const { view, spec } of words.slice(count)) stand.callout(view, spec);
  return bubbles(kit, drawing, crowded, stand).length === 0;
}

/** How far a cloud may stand out over the room of the views, short of the border, and how far it stands off a table, paper inches. */
const CLOUD_PAST = 0.115;
const ROUND_TABLE = 0.04;

/** Clouds last of all, round what stands: larger where their line would touch a text, as large as the view at most. */
function clouds(kit: Kit, block: TitleBlock, drawing: Drawing, stand: Stand): void {
  const page = roomInside(kit, drawing.paper, block);
  const draw = (rect: Rect, room: Rect): void => {
    const found = fitCloud(kit, rect, room, (strokes) => stand.first([{ strokes }], grown(page, CLOUD_PAST)) !== null);
    if (found === null) return;
    stand.strokes(found.strokes);
    const letter = stand.first(trianglePlaces(kit, block.revision, found.rect), page);
    if (letter !== null) stand.strokes(letter.strokes);
  };
  for (const view of drawing.views) {
    for (const { left, right, low, high } of view.clouds ?? []) {
      const [a, b] = [toPaper(view, viewPoint(left, low)), toPaper(view, viewPoint(right, high))];
      draw({ x: a.x, y: a.y, width: b.x - a.x, height: b.y - a.y }, grown(view.box, ROUND_TABLE));
    }
  }
  for (const table of drawing.cloudedTables ?? []) {
    const height = tableHeight(kit, table.rows.length);
    const rect = { x: table.at.x, y: table.at.y - height, width: table.widths.reduce((sum, w) => sum + w, 0), height };
    draw(rect, grown(rect, ROUND_TABLE));
  }
  for (const { title, lines, at, width } of drawing.cloudedNotes ?? []) {
    const height = noteHeight(kit, title, lines, width);
    const rect = { x: at.x, y: at.y - height, width, height };
    draw(rect, grown(rect, ROUND_TABLE));
  }
  for (const range of drawing.cloudedBars ?? []) draw(barRangeRect(kit, range), grown(page, ROUND_TABLE));
}

const grown = ({ x, y, width, height }: Rect, by: number): Rect => ({ x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by });

interface Word {
  readonly view: View;
  readonly spec: CalloutSpec;
}

const calloutsOf = (drawing: Drawing): Word[] => drawing.views.flatMap((view) => view.callouts.map((spec) => ({ view, spec })));

const dimensionsOf = (drawing: Drawing, required: boolean): { readonly view: View; readonly spec: DimensionSpec }[] =>
  drawing.views.flatMap((view) => view.dimensions.filter((spec) => spec.required === required).map((spec) => ({ view, spec })));

const weldsOf = (drawing: Drawing, required: boolean): { readonly view: View; readonly spec: WeldSpec }[] =>
  drawing.views.flatMap((view) => (view.welds ?? []).filter((spec) => (spec.optional !== true) === required).map((spec) => ({ view, spec })));

/** What has one place alone: frame, tables, notes, titles, steel, running dimensions and marks in bands. */
function begin(font: Font, block: TitleBlock, drawing: Drawing): { readonly kit: Kit; readonly stand: Stand } {
  const kit = makeKit(font, block.units, drawing.paper);
  const stand = makeStand(kit);
  stand.strokes(frameStrokes(kit, drawing.paper, block, { number: drawing.number, title: drawing.title, scaleText: drawing.scaleText }));
  for (const table of drawing.tables) stand.strokes(tableStrokes(kit, table));
  for (const chart of drawing.bars ?? []) stand.strokes(barChartStrokes(kit, chart));
  for (const note of drawing.notes) stand.strokes(noteStrokes(kit, note.title, note.lines, note.at, note.width));
  for (const view of drawing.views) stand.strokes(viewFoot(kit, view, block));
  for (const view of drawing.views) stand.steel(view, view.shapes);
  for (const view of drawing.views) {
    for (const item of runningsOf(kit, view)) {
      if (Array.isArray(item)) stand.strokes(item);
      else stand.item(item as Dimension);
    }
    for (const band of view.bands) {
      for (const item of bandCallouts(kit, view.id, band, (p) => toPaper(view, p), [view.box.x, view.box.x + view.box.width])) stand.item(item);
    }
  }
  return { kit, stand };
}

function runningsOf(kit: Kit, view: View): (Stroke[] | Dimension)[] {
  return view.runnings.flatMap((running) => {
    const whole: readonly [number, number] =
      running.along === 'x' ? [view.box.x, view.box.x + view.box.width] : [view.box.y, view.box.y + view.box.height];
    const zero = toPaper(view, running.datum)[running.along];
    const range: readonly [number, number] = running.limits === undefined ? whole : [zero - running.limits[0], zero + running.limits[1]];
    const { zero: datum, dimensions } = runningDimensions(kit, {
      view: view.id,
      along: running.along,
      datum: toPaper(view, running.datum),
      at: running.at.map((point) => toPaper(view, point)),
      values: running.at.map((point) => (running.along === 'x' ? point.x - running.datum.x : point.y - running.datum.y)),
      line: running.line,
      range,
    });
    return [datum, ...dimensions];
  });
}

/** Crowded callouts as numbered bubbles, their words in a table in the room that the drawing keeps for it. */
function bubbles(
  kit: Kit,
  drawing: Drawing,
  crowded: readonly Word[],
  stand: Stand,
): CalloutSpec[] {
  const room: Rect | null = drawing.overflow ?? null;
  const left: CalloutSpec[] = [];
  const rows: string[][] = [];
  for (const { view, spec } of crowded) {
    const full = room === null || rows.length >= rowsIn(kit, room.height);
    const input = { ...spec, view: view.id, target: toPaper(view, spec.target), others: [] };
    const best = full ? null : stand.best(bubblePlaces(kit, input, rows.length + 1), view.box);
    if (best === null) left.push(spec);
    else {
      stand.item({ ...best, text: spec.text });
      rows.push([String(rows.length + 1), spec.text]);
    }
  }
  if (rows.length > 0 && room !== null) {
    const columns = [
      { title: say('drawings.bubble.number'), align: 'end' },
      { title: say('drawings.bubble.text'), align: 'start' },
    ] as const;
    const widths = columnWidths(kit, columns, rows);
    stand.strokes(tableStrokes(kit, { title: say('drawings.bubble.title'), columns, rows, at: { x: room.x, y: room.y + room.height } as Drawing['tables'][number]['at'], widths }));
  }
  return left;
}
