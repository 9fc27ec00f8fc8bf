/** Stakeout: the whole site with the control points first, then every post hole by number, a table of its ties beside it. */
import { curvePart, curvePoint } from '../base/curve.ts';
import { sheetPoint, type Vec, viewPoint } from '../base/points.ts';
import { inches } from '../base/quantity.ts';
import { hasRoom } from '../drafting/draft.ts';
import { PENS, printSize } from '../drafting/kit.ts';
import { type CalloutSpec, type Column, type Drawing, type Shape, type View } from '../drafting/model.ts';
import { largerPaper, paperNamed } from '../drafting/paper.ts';
import { columnWidths, rowsIn, tableHeight } from '../drafting/table.ts';
import { footHeight } from '../drafting/view.ts';
import { stakeoutRows, type StakeRow } from '../schedules/index.ts';
import { say } from '../text/index.ts';
import { boundsOf } from './bounds.ts';
import { type DrawInput, type Page, pageOf } from './input.ts';
import { drawingOf } from './drawing-of.ts';
import { scaleToFit } from './scales.ts';
import { faceShapes, siteExtremes } from './site-view.ts';

export function stakeoutDrawings(input: DrawInput): Drawing[] {
  const page = pageOf(input);
  const rows = stakeoutRows(input.brief, input.layout);
  const controls = rows.filter((row) => row.kind === 'control');
  const holes = rows.filter((row) => row.kind !== 'control');
  const most = Math.min(32, rowsIn(page.kit, page.room.height));
  const parts: StakeRow[][] = [];
  for (let from = 0; from < holes.length; from += most) parts.push(...splitHoles(input, page, holes.slice(from, from + most)));
  return [
    fittedOverview(input, controls, holes),
    ...parts.map((part, i) => pointsDrawing(input, page, part, i + 1)),
  ];
}

function splitHoles(input: DrawInput, page: Page, rows: StakeRow[]): StakeRow[][] {
  if (rows.length === 1 || hasRoom(input.font, page.block, pointsDrawing(input, page, rows, 1))) return [rows];
  const half = Math.ceil(rows.length / 2);
  return [...splitHoles(input, page, rows.slice(0, half)), ...splitHoles(input, page, rows.slice(half))];
}

const holeShape = (row: StakeRow): Shape => ({
  kind: 'circle', center: viewPoint(row.x, row.y), radius: inches((row.holeDiameter ?? 0) / 2), pen: PENS.thin,
});
const cross = (at: Vec, size: number): Shape[] =>
  [
    [size, 0],
    [0, size],
  ].map(([x, y]): Shape => ({
    kind: 'curve', pen: PENS.thin,
    curve: { kind: 'line', a: viewPoint(at.x - x!, at.y - y!), b: viewPoint(at.x + x!, at.y + y!) },
  }));

function columnsOf(third: boolean): Column[] {
  const end = (title: string): Column => ({ title, align: 'end' });
  const start = (title: string): Column => ({ title, align: 'start' });
  return [
    start(say('drawings.stake.point')), start(say('drawings.stake.kind')), end('x'), end('y'), end(say('drawings.stake.tieA')), end(say('drawings.stake.tieB')),
    ...(third ? [end(say('drawings.stake.tieC'))] : []), start(say('drawings.stake.side')), end(say('drawings.stake.hole')),
  ];
}

function cellsOf(input: DrawInput, row: StakeRow): string[] {
  const size = (value: number): string => printSize({ units: input.brief.units }, value);
  const hole = row.holeDiameter === null || row.holeDepth === null ? '' : `${size(row.holeDiameter)} x ${size(row.holeDepth)}`;
  return [
    row.point, say(`drawings.stake.${row.kind}`), size(row.x), size(row.y), size(row.tieA), size(row.tieB),
    ...(row.tieC === null ? [] : [size(row.tieC)]), say(`drawings.stake.${row.baselineSide}`), hole,
  ];
}

/** On the brief's paper with the least paper round the site that its names and ties have room in, on a larger one where none does. */
function fittedOverview(input: DrawInput, controls: readonly StakeRow[], holes: readonly StakeRow[]): Drawing {
  let paper = paperNamed(input.brief.paper);
  for (;;) {
    const page = pageOf(input, paper);
    for (const margin of [10, 14, 19]) {
      const drawing = overview(input, page, controls, holes, margin);
      if (hasRoom(input.font, page.block, drawing)) return drawing;
    }
    const larger = largerPaper(paper);
    if (larger === null) return overview(input, page, controls, holes, 10);
    paper = larger;
  }
}

/** `margins`: letter heights of paper kept round the site. */
function overview(input: DrawInput, page: Page, controls: readonly StakeRow[], holes: readonly StakeRow[], margins: number): Drawing {
  const { kit, room, block } = page;
  const { layout, brief } = input;
  const all = new Set(layout.runs.map((run) => run.name));
  const bounds = boundsOf([...siteExtremes(layout, all), ...controls]);
  const title = say('drawings.stake.overview');
  const columns = columnsOf(brief.control.c !== null);
  const rows = controls.map((row) => cellsOf(input, row));
  const widths = columnWidths(kit, columns, rows);
  const lines = [say('drawings.stake.method'), ...(brief.control.note === '' ? [] : [brief.control.note]), say('drawings.stake.buried')];
  const tall = tableHeight(kit, rows.length);
  const top = room.y + room.height;
  const margin = margins * kit.h;
  const view0 = { x: room.x, y: room.y, width: room.width, height: room.height - tall - (lines.length + 3) * kit.pitch - 0.2 };
  const scale = scaleToFit(block.units, bounds.right - bounds.left, bounds.high - bounds.low, {
    width: view0.width - 2 * margin, height: view0.height - 1.4 * margin - 2 * kit.pitch,
  });
  const foot = footHeight(kit, { title, scaleText: scale.text }, block, room.width);
  const mark = (5 * kit.h) / 4 / scale.scale;
  const view: View = {
    id: 'stakeout', title, scale: scale.scale, scaleText: scale.text,
    at: sheetPoint(
      view0.x + view0.width / 2 - ((bounds.left + bounds.right) / 2) * scale.scale,
      view0.y + foot + (view0.height - foot) / 2 - ((bounds.low + bounds.high) / 2) * scale.scale,
    ),
    box: view0,
    shapes: [...faceShapes(layout, all, PENS.thin), ...holes.map(holeShape), ...controls.flatMap((row) => cross({ x: row.x, y: row.y }, mark))],
    dimensions: controls.slice(1).map((row) => ({
      measure: 'aligned', required: true, from: viewPoint(controls[0]!.x, controls[0]!.y), to: viewPoint(row.x, row.y),
      offsets: [0, 3 * kit.h, -3 * kit.h, 6 * kit.h, -6 * kit.h],
    })),
    runnings: [], bands: [],
    callouts: controls.map((row): CalloutSpec => ({ text: row.point, target: viewPoint(row.x, row.y), piece: null, toward: { x: -1, y: 1 }, layer: 'NOTES' })),
  };
  const table = { title: say('drawings.stake.controls'), columns, rows, at: sheetPoint(room.x, top), widths };
  const notes = [{ title: say('drawings.stake.how'), lines, at: sheetPoint(room.x, top - tall - 0.1), width: room.width }];
  return drawingOf(page, { views: [view], tables: [table], notes }, '2', 0, title, say('drawings.stake.file'));
}

function pointsDrawing(input: DrawInput, page: Page, rows: readonly StakeRow[], index: number): Drawing {
  const { kit, room, block } = page;
  const { layout } = input;
  const columns = columnsOf(input.brief.control.c !== null);
  const cells = rows.map((row) => cellsOf(input, row));
  const widths = columnWidths(kit, columns, cells);
  const wide = widths.reduce((sum, w) => sum + w, 0);
  const beside = room.width - wide - 0.3 >= 35 * kit.h;
  const tall = tableHeight(kit, rows.length);
  const box = beside
    ? { x: room.x, y: room.y, width: room.width - wide - 0.3, height: room.height }
    : { x: room.x, y: room.y, width: room.width, height: Math.max(room.height - tall - 0.2, 20 * kit.h) };
  const names = [...new Set(rows.map((row) => row.run ?? ''))];
  const runs = new Set(layout.runs.map((run) => run.name).filter((name) => names.includes(name)));
  const reach = Math.max(12, ...rows.map((row) => row.holeDiameter ?? 0));
  const bounds = boundsOf(rows.flatMap((row) => [-reach, reach].map((by) => ({ x: row.x + by, y: row.y + by }))));
  const title = say('drawings.stake.points', { from: rows[0]!.point, to: rows[rows.length - 1]!.point });
  const margin = 8 * kit.h;
  const scale = scaleToFit(block.units, Math.max(120, bounds.right - bounds.left), Math.max(120, bounds.high - bounds.low), {
    width: box.width - 2 * margin, height: box.height - 2 * margin - 3 * kit.pitch,
  });
  const foot = footHeight(kit, { title, scaleText: scale.text }, block, box.width);
  const middle = { x: (bounds.left + bounds.right) / 2, y: (bounds.low + bounds.high) / 2 };
  const outward = new Map(layout.posts.map((post) => [`${String(post.at.x)} ${String(post.at.y)}`, awayFrom(layout, post.run, post.at)]));
  const view: View = {
    id: 'points', title, scale: scale.scale, scaleText: scale.text,
    at: sheetPoint(box.x + box.width / 2 - middle.x * scale.scale, box.y + foot + (box.height - foot) / 2 - middle.y * scale.scale),
    box,
    shapes: [
      ...rows.map(holeShape),
      ...rows.flatMap((row) => cross({ x: row.x, y: row.y }, (row.holeDiameter ?? 6) / 3)),
      ...clipped(faceShapes(layout, runs, PENS.thin), bounds),
    ],
    dimensions: [], runnings: [], bands: [],
    callouts: rows.map((row): CalloutSpec => ({
      text: row.point, target: viewPoint(row.x, row.y), piece: null,
      toward: outward.get(`${String(row.x)} ${String(row.y)}`) ?? { x: row.x - middle.x, y: row.y - middle.y + 0.1 }, layer: 'NOTES',
    })),
  };
  const at = beside ? sheetPoint(room.x + room.width - wide, room.y + room.height) : sheetPoint(room.x, room.y + room.height);
  const table = { title, columns, rows: cells, at, widths };
  return drawingOf(page, { views: [view], tables: [table], notes: [] }, '2', index, title, say('drawings.stake.file'));
}

/** Away from the middle of the walk at a post: where there is room for its number. */
function awayFrom(layout: DrawInput['layout'], name: string, at: Vec): Vec {
  const run = layout.runs.find((one) => one.name === name);
  if (run === undefined) return { x: -1, y: 0.3 };
  const { path } = run;
  if (path.kind === 'line') {
    const way = { x: path.b.x - path.a.x, y: path.b.y - path.a.y };
    const side = way.x * (at.y - path.a.y) - way.y * (at.x - path.a.x);
    return side >= 0 ? { x: -way.y, y: way.x } : { x: way.y, y: -way.x };
  }
  const out = { x: at.x - path.center.x, y: at.y - path.center.y };
  return Math.hypot(out.x, out.y) >= path.radius - 1e-6 ? out : { x: -out.x, y: -out.y };
}

/** Shapes that lie wholly in a box, and the parts of the others that do, in chords short enough to look round. */
function clipped(shapes: readonly Shape[], box: ReturnType<typeof boundsOf>): Shape[] {
  const inside = (p: Vec): boolean => p.x >= box.left && p.x <= box.right && p.y >= box.low && p.y <= box.high;
  return shapes.flatMap((shape): Shape[] => {
    if (shape.kind === 'circle') return [shape];
    return partsInside(shape.curve, inside).map((curve) => ({ ...shape, curve }));
  });
}

function partsInside(curve: Extract<Shape, { kind: 'curve' }>['curve'], inside: (p: Vec) => boolean): (typeof curve)[] {
  const steps = 200;
  const out: (typeof curve)[] = [];
  let start: number | null = null;
  for (let i = 0; i <= steps + 1; i += 1) {
    const here = i <= steps && inside(curvePoint(curve, i / steps));
    if (here && start === null) start = i;
    if (!here && start !== null) {
      if (i - 1 > start) out.push(curvePart(curve, start / steps, (i - 1) / steps));
      start = null;
    }
  }
  return out;
}
