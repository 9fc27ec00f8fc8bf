/** How each kind of fence is built up outward from its face: a section through a post with its footing, and a piece of it from above. */
import { inches } from '../base/quantity.ts';
import { sheetPoint, viewPoint } from '../base/points.ts';
import { PENS, printSize } from '../drafting/kit.ts';
import { hasRoom } from '../drafting/draft.ts';
import { type DimensionSpec, type Drawing, type Note, type Shape } from '../drafting/model.ts';
import { largerPaper, paperNamed } from '../drafting/paper.ts';
import { noteHeight } from '../drafting/table.ts';
import { type Pen } from '../drafting/primitives.ts';
import { type Fence } from '../layout/index.ts';
import { isRampFence } from '../parts/index.ts';
import { say } from '../text/index.ts';
import { type Brief } from '../brief/types.ts';
import { copedWeld, lappedWeld } from '../schedules/index.ts';
import { boundsOf } from './bounds.ts';
import { type DrawInput, pageOf } from './input.ts';
import { type Detail, detailView } from './detail.ts';
import { weldAt } from './details/say-size.ts';
import { drawingOf } from './drawing-of.ts';

/** One drawing for each different build. */
export function sectionDrawings(input: DrawInput): Drawing[] {
  const builds = new Map<string, Fence[]>();
  for (const fence of input.layout.fences.filter((one) => !isRampFence(input.layout, one))) {
    const { brief } = fence;
    const key = [
      brief.construction, brief.height, brief.solidFrom, brief.solidTo, brief.rails, brief.bottomRail, brief.rail.name, brief.post.name, brief.sheet?.name ?? '',
    ].join('|');
    builds.set(key, [...(builds.get(key) ?? []), fence]);
  }
  return [...builds.values()].map((fences, i) => fitted(input, fences, i));
}

/** How far the ground is drawn beside the hole, inches. */
const GROUND = 6;

/** So many fences are named in a drawing's title; of more a note names all. */
const NAMED = 4;

/** Both views on the brief's paper, on a larger one where their figures and words have no room. */
function fitted(input: DrawInput, fences: readonly Fence[], index: number): Drawing {
  const fence = fences[0]!;
  const names = fences.map(({ run, side }) => say('drawings.fence.name', { run, side }));
  const details = [upright(input, fence), fromAbove(input.brief, fence)];
  const title = names.length > NAMED
    ? say('drawings.section.titleMore', { fences: names.slice(0, NAMED).join(', '), more: String(names.length - NAMED) })
    : say('drawings.section.title', { fences: names.join(', ') });
  let paper = paperNamed(input.brief.paper);
  for (;;) {
    const page = pageOf(input, paper);
    const share = (page.room.width - 0.3) / 2;
    const { x, y, width } = page.room;
    const notes: Note[] = names.length > NAMED ? [{ title: say('drawings.section.fences'), lines: [names.join(', ')], at: sheetPoint(x, y + page.room.height), width }] : [];
    const under = notes.reduce((high, note) => high + noteHeight(page.kit, note.title, note.lines, width) + 0.1, 0);
    const at = (margin: number): Drawing => {
      const views = details.map((detail, j) => detailView(page, detail, { x: x + j * (share + 0.3), y, width: share, height: page.room.height - under }, margin));
      return drawingOf(page, { views, tables: [], notes }, '5', index, title, say('drawings.section.file'));
    };
    for (const margin of [8, 11, 14, 18]) {
      const drawing = at(margin);
      if (hasRoom(input.font, page.block, drawing)) return drawing;
    }
    const larger = largerPaper(paper);
    if (larger === null) return at(11);
    paper = larger;
  }
}

const rectangle = (pen: Pen, x0: number, x1: number, y0: number, y1: number): Shape[] =>
  [
    [x0, y0, x1, y0],
    [x1, y0, x1, y1],
    [x1, y1, x0, y1],
    [x0, y1, x0, y0],
  ].map(([ax, ay, bx, by]) => ({ kind: 'curve', pen, curve: { kind: 'line', a: viewPoint(ax!, ay!), b: viewPoint(bx!, by!) } }));

const line = (pen: Pen, x0: number, y0: number, x1: number, y1: number): Shape => ({
  kind: 'curve',
  pen,
  curve: { kind: 'line', a: viewPoint(x0, y0), b: viewPoint(x1, y1) },
});

function upright(input: DrawInput, fence: Fence): Detail {
  const { section, brief } = fence;
  const { diameter, depth } = input.brief.footings;
  const { k, kr, D, t, d } = section;
  const solid = brief.sheet !== null && brief.solidTo > 0;
  const left = Math.min(-4, k - diameter / 2);
  const right = k + diameter / 2;
  return {
    id: 'section',
    title: say('drawings.section.upright', { post: brief.post.name, rail: brief.rail.name, sheet: brief.sheet?.name ?? say('drawings.section.noSheet') }),
    bounds: boundsOf([{ x: left - GROUND, y: -depth }, { x: right + GROUND, y: brief.height }]),
    shapes: [
      ...rectangle(PENS.outline, k - D / 2, k + D / 2, -depth, brief.height),
      ...rectangle(PENS.hidden, k - diameter / 2, k + diameter / 2, -depth, 0),
      line(PENS.thin, left - GROUND, 0, right + GROUND, 0),
      line(PENS.center, 0, -4, 0, brief.height + 4),
      ...(solid ? rectangle(PENS.outline, 0, t, brief.solidFrom, brief.solidTo) : []),
      ...section.rows.flatMap((row): Shape[] =>
        brief.rail.shape === 'round'
          ? [{ kind: 'circle', center: viewPoint(kr, row), radius: inches(d / 2), pen: PENS.outline }]
          : rectangle(PENS.outline, kr - d / 2, kr + d / 2, row - section.railHeight / 2, row + section.railHeight / 2),
      ),
    ],
    dimensions: (h) => {
      const out = [4, 6, 8, 10, 12].map((reach) => -reach * h);
      const specs: DimensionSpec[] = [
        { measure: 'linear', along: 'y', required: true, from: viewPoint(right, -depth), to: viewPoint(right, 0), offsets: out },
        { measure: 'linear', along: 'y', required: true, from: viewPoint(right, 0), to: viewPoint(k + D / 2, brief.height), offsets: out },
        { measure: 'linear', along: 'x', required: true, from: viewPoint(k - diameter / 2, -depth), to: viewPoint(k + diameter / 2, -depth), offsets: [-3, -5, -7].map((reach) => reach * h) },
      ];
      return specs;
    },
    callouts: [
      { text: say('drawings.section.face'), target: viewPoint(0, brief.height + 3), piece: null, toward: { x: -1, y: 0.2 }, layer: 'NOTES' },
      { text: say('drawings.section.ground'), target: viewPoint(left - 3, 0), piece: null, toward: { x: -1, y: 1 }, layer: 'NOTES' },
      ...section.rows.map((row) => ({
        text: say('drawings.section.row', { height: sizeOf(input, row + section.railHeight / 2) }), target: viewPoint(kr, row), piece: null, toward: { x: -1, y: 0 }, layer: 'NOTES' as const,
      })),
    ],
  };
}

/** A piece of a fence from above: how it is built up outward from its face. */
export function fromAbove(project: Brief, fence: Fence): Detail {
  const { section, brief } = fence;
  const { k, kr, D, t, d } = section;
  const half = Math.max(6, D);
  const solid = t > 0;
  return {
    id: 'build-up',
    title: say(brief.construction === 'lapped' ? 'drawings.section.lapped' : 'drawings.section.coped'),
    bounds: boundsOf([{ x: -half, y: -1 }, { x: half, y: k + D / 2 }]),
    shapes: [
      line(PENS.center, -half - 1, 0, half + 1, 0),
      ...(solid ? [line(PENS.outline, -half, t, half, t)] : []),
      line(PENS.outline, -half, 0, half, 0),
      ...railLines(fence, half),
      ...(brief.post.shape === 'round'
        ? [{ kind: 'circle' as const, center: viewPoint(0, k), radius: inches(D / 2), pen: PENS.outline }]
        : rectangle(PENS.outline, -brief.post.along / 2, brief.post.along / 2, k - D / 2, k + D / 2)),
      line(PENS.center, -half, kr, half, kr),
    ],
    dimensions: (h) => [
      { measure: 'linear', along: 'y', required: true, decimal: true, prefix: say('drawings.section.toRail'), from: viewPoint(-half, 0), to: viewPoint(-half, kr), offsets: [4, 7, 10].map((reach) => reach * h) },
      { measure: 'linear', along: 'y', required: true, decimal: true, prefix: say('drawings.section.toPost'), from: viewPoint(half, 0), to: viewPoint(0, k), offsets: [-4, -7, -10].map((reach) => reach * h) },
    ],
    callouts: [
      ...(solid ? [{ text: say('drawings.section.sheet', { sheet: brief.sheet?.name ?? '' }), target: viewPoint(-half / 2, t / 2), piece: null, toward: { x: -0.5, y: -1 }, layer: 'NOTES' as const }] : []),
      { text: say('drawings.section.cattle'), target: viewPoint(half / 2, 0), piece: null, toward: { x: 0.5, y: -1 }, layer: 'NOTES' },
      { text: brief.rail.name, target: viewPoint(-half * 0.7, kr + d / 4), piece: null, toward: { x: -1, y: 1 }, layer: 'NOTES' },
      { text: brief.post.name, target: viewPoint(0, k), piece: null, toward: { x: 0.4, y: 1 }, layer: 'NOTES' },
    ],
    welds: [
      brief.construction === 'lapped'
        ? weldAt(lappedWeld(project, brief.rail, brief.post), [0, kr + d / 2], [-1, 0.8])
        : weldAt(copedWeld(project, brief.rail, brief.post), [reachOf(fence), kr + d / 2], [1, 0.7]),
    ],
  };
}

/** From the post's center to a coped rail's long point. */
const reachOf = ({ section: { d, D } }: Fence): number => Math.sqrt(Math.max(0, (D / 2) ** 2 - (d / 2) ** 2));

/** Lapped rails run past the post; coped ones end on it. */
function railLines(fence: Fence, half: number): Shape[] {
  const { kr, d } = fence.section;
  const edges = [kr - d / 2, kr + d / 2];
  if (fence.brief.construction === 'lapped') return edges.map((y) => line(PENS.outline, -half, y, half, y));
  const reach = reachOf(fence);
  return edges.flatMap((y) => [line(PENS.outline, -half, y, -reach, y), line(PENS.outline, reach, y, half, y)]);
}

const sizeOf = (input: DrawInput, value: number): string => printSize({ units: input.brief.units }, value);
