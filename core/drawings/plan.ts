/** The plan: every run named, stations along the chute, overall sizes, and a table of runs with their pieces' marks. */
import { curveHeading, curveLength, curvePoint } from '../base/curve.ts';
import { radians } from '../base/quantity.ts';
import { leftOf, scale as times, sheetPoint, unitAt, type Vec, type ViewPoint, viewPoint } from '../base/points.ts';
import { hasRoom } from '../drafting/draft.ts';
import { printSize } from '../drafting/kit.ts';
import { type CalloutSpec, type Column, type DimensionSpec, type Drawing, type Shape, type View } from '../drafting/model.ts';
import { largerPaper, paperNamed } from '../drafting/paper.ts';
import { footHeight } from '../drafting/view.ts';
import { type Layout, type Post, type Run } from '../layout/index.ts';
import { type Piece } from '../parts/index.ts';
import { say } from '../text/index.ts';
import { printAngle } from '../units/index.ts';
import { type Bounds, boundsOf, extremesOf } from './bounds.ts';
import { deckCallouts, deckPlanShapes } from './catwalks/shapes.ts';
import { flowBlocks } from './flow.ts';
import { gateCallouts, gatePlanShapes } from './gate-plan.ts';
import { compass } from './compass.ts';
import { glareTable } from './glare-table.ts';
import { type DrawInput, type Page, pageOf } from './input.ts';
import { drawingOf } from './drawing-of.ts';
import { type Scale, scaleToFit } from './scales.ts';
import { rampsFromAbove } from './ramps/from-above.ts';
import { roofShapes } from './yard/roof-shapes.ts';
import { faceShapes, postPieces, postShape, siteExtremes, walkShapes } from './site-view.ts';
import { tableBlocks } from './table-blocks.ts';

/** Below this scale a plan goes to a larger paper, and is split where there is none. */
const LEAST = 1 / 400;
/** The compass in the plan's upper right corner, in letter heights: the middle of its rose from there, and its radius. */
const ROSE = { right: 8, down: 7, radius: 3 };

export function planDrawings(input: DrawInput): Drawing[] {
  const page = pageOf(input);
  const whole = input.layout.runs.map((run) => run.name);
  const plans = splitPlan(input, whole, false);
  const table = runTable(input);
  const glare = glareTable(input);
  const tables = flowBlocks(page, [
    tableBlocks(page, say('drawings.plan.runs'), say('drawings.plan.runs'), table.columns, table.rows),
    glare === null ? [] : tableBlocks(page, say('drawings.glare.title'), say('drawings.glare.title'), glare.columns, glare.rows),
  ]);
  const count = plans.length;
  return [
    ...plans.map((plan, i) => renumber(plan, i)),
    ...tables.map((filled, i) => drawingOf(page, filled, '1', count + i, say('drawings.plan.runsTitle'), say('drawings.plan.runsFile'))),
  ];
}

const renumber = (drawing: Drawing, i: number): Drawing => {
  const number = `1${String(i + 1).padStart(2, '0')}`;
  return { ...drawing, number, file: `${number} ${say('drawings.plan.file')}` };
};

/** One plan where the runs fit it; else on larger paper; else in two. `part`: a part of the walk. */
function splitPlan(input: DrawInput, runs: readonly string[], part: boolean): Drawing[] {
  const site = siteOf(input.layout, runs);
  let paper = paperNamed(input.brief.paper);
  for (;;) {
    const page = pageOf(input, paper);
    const larger = largerPaper(paper);
    const last = larger === null && runs.length === 1;
    // What is drawn too small is not worth its words' places.
    if (last || scaleOn(page, site).scale >= LEAST) {
      const drawing = planOn(input, page, site, part);
      if (last || hasRoom(input.font, page.block, drawing)) return [drawing];
    }
    if (larger === null) {
      const half = Math.ceil(runs.length / 2);
      return [...splitPlan(input, runs.slice(0, half), true), ...splitPlan(input, runs.slice(half), true)];
    }
    paper = larger;
  }
}

/** The runs of one plan, and the steel that it must hold. */
interface Site {
  readonly names: readonly string[];
  readonly runs: ReadonlySet<string>;
  readonly extremes: readonly Vec[];
  readonly gates: readonly Shape[];
  readonly bounds: Bounds;
}

function siteOf(layout: Layout, names: readonly string[]): Site {
  const runs = new Set(names);
  const extremes = siteExtremes(layout, runs);
  const gates = gatePlanShapes(layout, runs);
  // A gate's leaf may swing far past the steel of a part of the walk.
  const bounds = boundsOf([...extremes, ...gates.flatMap((shape) => (shape.kind === 'curve' ? extremesOf(shape.curve) : []))]);
  return { names, runs, extremes, gates, bounds };
}

/** The scale at which the runs fill a sheet. */
function scaleOn({ kit, room, block }: Page, { bounds }: Site): Scale {
  const margin = { x: 16 * kit.h, y: 11 * kit.h };
  return scaleToFit(block.units, bounds.right - bounds.left, bounds.high - bounds.low, { width: room.width - 2 * margin.x, height: room.height - 2 * margin.y - 2 * kit.pitch });
}

function planOn(input: DrawInput, page: Page, site: Site, part: boolean): Drawing {
  const { kit, room, block } = page;
  const { layout } = input;
  const { names, runs, extremes, gates, bounds } = site;
  const title = part ? say('drawings.plan.part', { from: names[0]!, to: names[names.length - 1]! }) : say('drawings.plan.title');
  const scale = scaleOn(page, site);
  const foot = footHeight(kit, { title, scaleText: scale.text }, block, room.width);
  const middle = { x: (bounds.left + bounds.right) / 2, y: (bounds.low + bounds.high) / 2 };
  const pieceOf = postPieces(input.parts);
  const own = layout.runs.filter((run) => runs.has(run.name));
  const at = sheetPoint(
    room.x + room.width / 2 - middle.x * scale.scale,
    room.y + foot + (room.height - foot) / 2 - middle.y * scale.scale,
  );
  const rose = { x: (room.x + room.width - ROSE.right * kit.h - at.x) / scale.scale, y: (room.y + room.height - ROSE.down * kit.h - at.y) / scale.scale };
  const north = compass(input.brief, rose, (ROSE.radius * kit.h) / scale.scale);
  const view: View = {
    id: 'plan',
    title,
    scale: scale.scale,
    scaleText: scale.text,
    at,
    box: room,
    shapes: [
      ...faceShapes(layout, runs),
      ...walkShapes(layout, runs),
      ...gates,
      ...rampsFromAbove(layout, runs),
      ...deckPlanShapes(layout, runs),
      ...roofShapes(layout, runs),
      ...layout.posts.filter((post) => runs.has(post.run)).map((post) => postShape(post, pieceOf(post))),
      ...(north?.shapes ?? []),
    ],
    dimensions: [...overall(extremes, scale.scale, kit.h), ...placeSizes(input, runs, kit.h)],
    runnings: [],
    bands: [],
    // A station's figure is longer than a short run: names come first.
    callouts: [
      ...own.flatMap((run) => nameCallouts(input, run, middle)),
      ...gateCallouts(layout, runs, middle),
      ...deckCallouts(layout, runs, middle),
      ...own.flatMap((run) => stationCallouts(input, run)),
      ...markCallouts(input, runs, middle),
      ...(north?.callouts ?? []),
    ],
  };
  const filled = { views: [view], tables: [], notes: [] };
  return drawingOf(page, filled, '1', 0, title, say('drawings.plan.file'));
}

/** Overall length and breadth, between the outermost steel, outside everything. */
export function overall(extremes: readonly Vec[], scale: number, h: number): DimensionSpec[] {
  const pick = (better: (a: Vec, b: Vec) => boolean): Vec => extremes.reduce((best, point) => (better(point, best) ? point : best));
  const left = pick((a, b) => a.x < b.x);
  const right = pick((a, b) => a.x > b.x);
  const low = pick((a, b) => a.y < b.y);
  const high = pick((a, b) => a.y > b.y);
  const out = [4, 6.5, 9];
  return [
    {
      measure: 'linear', along: 'x', required: true, from: viewPoint(left.x, left.y), to: viewPoint(right.x, right.y),
      offsets: out.map((reach) => -((left.y - low.y) * scale + reach * h)),
    },
    {
      measure: 'linear', along: 'y', required: true, from: viewPoint(low.x, low.y), to: viewPoint(high.x, high.y),
      offsets: out.map((reach) => (low.x - left.x) * scale + reach * h),
    },
  ];
}

/** Sizes that a person looks for on the plan: drawn where they have room, and in the table of runs in any case. */
function placeSizes(input: DrawInput, runs: ReadonlySet<string>, h: number): DimensionSpec[] {
  const { layout } = input;
  const specs: DimensionSpec[] = [];
  for (const run of layout.runs) {
    // A ramp has its sizes on its own drawings.
    if (!runs.has(run.name) || layout.ramps.some((ramp) => ramp.run === run)) continue;
    for (const side of ['left', 'right'] as const) {
      const face = run.faces[side];
      if (face === null) continue;
      if (face.kind === 'line' && side === 'right' && run.length > 1) {
        specs.push({
          measure: 'aligned', required: false, from: viewPoint(face.a.x, face.a.y), to: viewPoint(face.b.x, face.b.y),
          offsets: [-4, -6, -9].map((reach) => reach * h),
        });
      }
      const inner = run.name === 'crowd-pen' || (run.hand === side && run.kind === 'arc');
      if (face.kind === 'arc' && inner) {
        specs.push({
          measure: 'radius', required: run.name === 'crowd-pen', center: viewPoint(face.center.x, face.center.y), radius: face.radius,
          angles: [0.5, 0.35, 0.65, 0.2, 0.8].map((share) => radians(face.start + face.sweep * share)),
        });
      }
    }
  }
  const first = layout.runs.find((run) => run.name === 'chute-1');
  if (first !== undefined && runs.has(first.name)) {
    const { left, right } = first.faces;
    if (left !== null && right !== null) {
      const a = curvePoint(left, 0.5);
      const b = curvePoint(right, 0.5);
      specs.push({ measure: 'aligned', required: true, from: viewPoint(a.x, a.y), to: viewPoint(b.x, b.y), offsets: [0, 3 * h, -3 * h] });
    }
  }
  return specs;
}

/** The run's name. `middle`: of the whole plan; words are looked for away from it. */
export function nameCallouts({ layout }: Pick<DrawInput, 'layout'>, run: Run, middle: Vec): CalloutSpec[] {
  if (run.length < 1) return [];
  const at = run.name === 'crowd-pen' ? penMiddle(layout) : run.name === 'junction' ? viewPoint(layout.mouth.x, layout.mouthDistance * 0.6) : curvePoint(run.path, 0.5);
  const away = Math.hypot(at.x - middle.x, at.y - middle.y) < 1 ? { x: 1, y: 0 } : { x: at.x - middle.x, y: at.y - middle.y };
  const others = elsewhere(run);
  return [{ text: run.name, target: viewPoint(at.x, at.y), piece: null, toward: away, layer: 'NOTES', ...(others.length === 0 ? {} : { others }) }];
}

/** Further points of a run that its name may stand at: a short leader from one of them beats a long one from the middle. */
const elsewhere = (run: Run): ViewPoint[] =>
  run.name === 'crowd-pen' || run.name === 'junction' ? [] : [0.3, 0.7, 0.12, 0.88].map((share) => curvePoint(run.path, share)).map(({ x, y }) => viewPoint(x, y));

/** The station where a run of the chute begins, and where its last one ends. */
export function stationCallouts({ layout, brief }: Pick<DrawInput, 'layout' | 'brief'>, run: Run): CalloutSpec[] {
  if (run.length < 1 || run.from === null) return [];
  const station = (value: number, share: number): CalloutSpec => {
    const here = curvePoint(run.path, share);
    const across = leftOf(unitAt(curveHeading(run.path, share)));
    return {
      text: say('drawings.plan.station', { station: printSize({ units: brief.units }, value) }),
      target: viewPoint(here.x, here.y), piece: null, toward: times(across, run.hand === 'left' ? -1 : 1), layer: 'NOTES',
    };
  };
  const last = run === layout.runs.findLast((one) => one.from !== null);
  return [station(run.from, 0), ...(last ? [station(run.from + run.length, 1)] : [])];
}

function penMiddle(layout: Layout): Vec {
  const pen = layout.runs.find((run) => run.name === 'crowd-pen')!;
  const out = curvePoint(pen.path, 0.5);
  return { x: out.x / 2, y: out.y / 2 };
}

/** One post of each fence by its mark, where there is room; all marks stand in the table and on the panels. */
export function markCallouts(input: DrawInput, runs: ReadonlySet<string>, middle: Vec): CalloutSpec[] {
  const pieceOf = postPieces(input.parts);
  const standing = new Map<string, Post[]>();
  for (const post of input.layout.posts) {
    if (post.kind === 'pivot-post' || !runs.has(post.run)) continue;
    const fence = `${post.run} ${post.side}`;
    const own = standing.get(fence);
    if (own === undefined) standing.set(fence, [post]);
    else own.push(post);
  }
  return input.layout.fences.flatMap((fence): CalloutSpec[] => {
    const own = standing.get(`${fence.run} ${fence.side}`) ?? [];
    const post = own[Math.floor(own.length / 2)];
    const piece = post === undefined ? undefined : pieceOf(post);
    if (post === undefined || piece === undefined) return [];
    return [
      { text: piece.mark, target: viewPoint(post.at.x, post.at.y), piece: piece.key, toward: { x: post.at.x - middle.x, y: post.at.y - middle.y }, layer: 'MARKS', optional: true, near: true },
    ];
  });
}

function runTable(input: DrawInput): { readonly columns: readonly Column[]; readonly rows: readonly (readonly string[])[] } {
  const { brief, layout, parts } = input;
  const size = (value: number | null): string => (value === null ? '' : printSize({ units: brief.units }, value));
  const marks = new Map<string, Set<string>>();
  for (const piece of parts.pieces) {
    const key = `${piece.run} ${piece.side}`;
    marks.set(key, (marks.get(key) ?? new Set()).add(piece.mark));
  }
  const end = (title: string): Column => ({ title, align: 'end' });
  const start = (title: string): Column => ({ title, align: 'start' });
  const columns = [
    start(say('drawings.run.name')), end(say('drawings.run.from')), end(say('drawings.run.length')), end(say('drawings.run.inside')),
    end(say('drawings.run.angle')), start(say('drawings.run.hand')), end(say('drawings.run.width')), start(say('drawings.run.marks')),
  ];
  const rows = layout.runs.map((run) => {
    const sides = (['left', 'right'] as const)
      .map((side) => ({ side, list: [...(marks.get(`${run.name} ${side}`) ?? [])] }))
      .filter(({ list }) => list.length > 0)
      .map(({ side, list }) => say('drawings.run.side', { side: say(`drawings.side.${side}`), marks: list.sort(byMark).join(' ') }));
    return [
      run.name, size(run.from), size(lengthOf(run)), size(run.insideRadius), run.angle === null ? '' : printAngle(run.angle),
      run.hand === null ? '' : say(`drawings.side.${run.hand}`), isWalked(run) ? size(run.width) : '', sides.join('; '),
    ];
  });
  return { columns, rows };
}

/** A run that cattle walk along: no fence beside the walk, no fence across it. */
const isWalked = (run: Run): boolean => run.aside !== true && run.length > 1e-6;

/** Of a fence that is no part of the walk, the fence's own. */
const lengthOf = (run: Run): number =>
  isWalked(run) ? run.length : Math.max(0, ...(['left', 'right'] as const).map((side) => (run.faces[side] === null ? 0 : curveLength(run.faces[side]))));

const byMark = (a: Piece['mark'], b: Piece['mark']): number =>
  a.charCodeAt(0) - b.charCodeAt(0) || Number(a.replace(/\D/g, '')) - Number(b.replace(/\D/g, '')) || (a < b ? -1 : 1);

