/**
 * Random project files over the full ranges of the project contract, written the way a person would write them: most can be drawn.
 * A quarter stand at the corners of the ranges.
 */
import * as fc from 'fast-check';
import { checkedDraw, seededDraw, type Draw } from './draw.ts';
import { fenceDepth, POSTS, postSize, randomFence, type RandomFence } from './random-fence.ts';
import { randomAlley, randomRuns, type RandomRun } from './random-path.ts';
import { rampRuns, randomCatwalks } from './random-catwalks.ts';
import { randomReturn } from './random-return.ts';
import { randomProjectOpenings } from './random-project-openings.ts';
import { randomSubjects, randomSurroundings } from './random-subjects.ts';
import { randomShop } from './random-shop.ts';
import { writeLength } from './write-length.ts';

/** A project file as JSON holds it. */
export type ProjectJson = Readonly<Record<string, unknown>>;

const PAPERS = ['ANSI A', 'ANSI B', 'ANSI C', 'ANSI D', 'ANSI E', 'ISO A4', 'ISO A3', 'ISO A2', 'ISO A1', 'ISO A0'] as const;
const TITLES = ['Juniper Flat', 'Three Gate Camp', 'O’Dell & Sons <north>', '牧場 β', 'Pen "7" = 50 %%c', '🐂 corrals'] as const;
const RADIANS = Math.PI / 180;

interface Corner {
  readonly radius: number;
  readonly width: number;
  readonly sweep: number;
  readonly funnelAngle: number;
  /** u0, from the pivot post's center along either face. */
  readonly gap: number;
}

/** A crowd pen whose two fences leave the pivot post with room between them and enough of the funnel behind. */
function randomCorner(draw: Draw, fences: readonly RandomFence[]): Corner {
  const depth = Math.max(...fences.map(fenceDepth));
  const post = Math.max(...fences.map(postSize));
  for (let tries = 0; tries < 20; tries += 1) {
    const radius = draw.figure(72, 240);
    const width = draw.figure(14, 40);
    const sweep = draw.chance(0.5) ? 180 : draw.figure(90, 240);
    const funnelAngle = draw.chance(0.5) ? 30 : draw.figure(10, 90);
    const half = ((funnelAngle + 180 - sweep) / 2) * RADIANS;
    if (half < 5 * RADIANS) continue;
    const k = depth - post / 2;
    const gap = (k * Math.max(0, Math.cos(half)) + post / 2 + 0.5) / Math.sin(half);
    const funnel = (radius - width) / Math.sin(funnelAngle * RADIANS);
    const corner = depth * Math.tan((funnelAngle / 2) * RADIANS);
    if (funnel - gap > 25 && funnel - gap - corner > post + 12) return { radius, width, sweep, funnelAngle, gap };
  }
  return { radius: 144, width: 28, sweep: 180, funnelAngle: 30, gap: (depth + post + 1) / Math.sin(15 * RADIANS) };
}

const lengthOf = (run: RandomRun): number => (run.kind === 'straight' ? run.length : run.insideRadius * run.angle * RADIANS);

/** Bays that make a package of drawings too large to wait for; one project in thirty keeps its own spacing all the same. */
function widened(draw: Draw, fence: RandomFence, path: readonly RandomRun[], radius: number): RandomFence {
  const total = path.reduce((sum, run) => sum + lengthOf(run), 4 * radius);
  const least = Math.min(144, Math.ceil(total / (draw.chance(0.03) ? 400 : 60)));
  return fence.postSpacing >= least ? fence : { ...fence, postSpacing: least };
}

function fenceGroup(draw: Draw, units: 'in' | 'mm', fence: RandomFence): ProjectJson {
  const length = (value: number): number | string => writeLength(draw, units, value);
  return {
    ...fence, height: length(fence.height), solidFrom: length(fence.solidFrom), solidTo: length(fence.solidTo),
    bottomRail: length(fence.bottomRail), postSpacing: length(fence.postSpacing),
  };
}

/** The crowd pen's fence, and others where they differ from it: whole ones, or a side left open. */
function fenceGroups(draw: Draw, units: 'in' | 'mm', base: RandomFence, others: readonly RandomFence[]): ProjectJson {
  const [alley, junction, chute, right] = others.map((fence) => fenceGroup(draw, units, fence));
  const groups: ProjectJson = {
    alley: draw.chance(0.5) ? alley : { ...alley, left: { solidTo: 0 } },
    junction: draw.chance(0.5) ? junction : { left: junction },
    chute: draw.chance(0.5) ? { ...chute, right } : { right: { sheet: null } },
    ramp: { sheet: '10 ga' },
    pens: { left: { solidTo: 0 } },
  };
  const kept = others.length === 0 ? [] : Object.entries(groups).filter(() => draw.chance(0.5));
  const open = others.length === 0 && draw.chance(0.3) ? [['chute', { right: { solidTo: 0 } }] as const] : [];
  return { crowdPen: fenceGroup(draw, units, base), ...Object.fromEntries([...kept, ...open]) };
}

/** A load on a post, as often as not. */
const randomLoad = (draw: Draw): ProjectJson => (draw.chance(0.5) ? {} : { load: draw.figure(1, 100_000), loadHeight: draw.figure(1, 96), heldAtSurface: draw.chance(0.5) });

function writeRun(draw: Draw, units: 'in' | 'mm', run: RandomRun): ProjectJson {
  return run.kind === 'straight'
    ? { ...run, length: writeLength(draw, units, run.length) }
    : { ...run, insideRadius: writeLength(draw, units, run.insideRadius) };
}

function drawProject(draw: Draw): ProjectJson {
  const units = draw.pick(['in', 'in', 'mm'] as const);
  const length = (value: number): number | string => writeLength(draw, units, value);
  const first = randomFence(draw);
  const more = draw.chance(0.5) ? [] : Array.from({ length: 4 }, () => randomFence(draw));
  const corner = randomCorner(draw, [first, ...more]);
  const depth = Math.max(...[first, ...more].map(fenceDepth));
  const chute = randomRuns(draw, depth, 40);
  const alley = randomAlley(draw, depth, corner.gap + 26);
  const [base = first, ...others] = [first, ...more].map((fence) => widened(draw, fence, [...chute, ...alley], corner.radius));
  const footing = draw.figure(12, 120);
  const hand = draw.pick(['left', 'right'] as const);
  const pivotPost = draw.pick(POSTS)[0];
  const project: ProjectJson = {
    format: 'penwright-project', version: 1,
    title: draw.pick(TITLES), units, paper: draw.pick(PAPERS),
    ...(draw.chance(0.5) ? { client: draw.pick(['', 'Bench Creek', '=2+3']), revision: { letter: draw.pick(['A', 'C']), date: '2026-02-28', note: 'as built' }, revisions: [{ letter: 'A', date: '2026-01-05' }, { letter: 'B', note: 'wider gate' }].slice(0, draw.whole(0, 2)) } : {}),
    ...(draw.chance(0.5) ? randomSurroundings(draw) : {}),
    alley: { runs: alley.map((run) => writeRun(draw, units, run)) },
    crowdPen: {
      radius: length(corner.radius), sweep: corner.sweep, hand, funnelAngle: corner.funnelAngle,
      gateClearance: length(draw.figure(0.25, 6)), pivotPost, ...(draw.chance(0.1) ? { pivotLength: 144 } : {}),
    },
    chute: { width: length(corner.width), runs: chute.map((run) => writeRun(draw, units, run)) },
    fences: fenceGroups(draw, units, base, others),
    footings: { diameter: length(draw.figure(4, 48)), depth: length(footing), ...randomLoad(draw) },
    shop: randomShop(draw, [base, ...others], pivotPost, footing),
    control: { b: [length(draw.pick([-1, 1]) * draw.figure(120, 480)), length(draw.figure(-240, 240))], ...(draw.chance(0.2) ? { c: [60, length(draw.figure(-480, -120))] } : {}) },
  };
  const subjects: ProjectJson = draw.chance(0.3) ? randomSubjects(draw) : {};
  return {
    ...project,
    ...subjects,
    ...(draw.chance(0.3) ? { catwalks: randomCatwalks(draw, { alley, chute, ...corner, hand, ramps: rampRuns((subjects['ramps'] ?? []) as readonly ProjectJson[]) }, Math.min(...[base, ...others].map(({ height }) => height)), length) } : {}),
    ...(draw.chance(0.6) ? { openings: [...randomProjectOpenings(draw, { alley, chute, ...corner, hand }, length), ...penGates(draw, (subjects['sortPens'] ?? []) as readonly ProjectJson[])] } : {}),
    ...(draw.chance(0.12) ? { returnAlley: randomReturn(draw, chute, corner.width, length) } : {}),
  };
}

/** A man gate in the back fence of each sort pen, some near the end of it. */
const penGates = (draw: Draw, pens: readonly ProjectJson[]): readonly ProjectJson[] =>
  pens.map(({ side }, i) => ({ kind: 'man-gate', run: `sort-${String(i + 1)}-back`, side, at: draw.figure(12, 228), width: draw.figure(10, 30) }));

/** Whole project files, for properties: fast-check shrinks them. */
export const projectArbitrary: fc.Arbitrary<ProjectJson> = fc.gen().map((gen) => {
  const corner = gen(fc.integer, { min: 0, max: 3 }) === 0;
  return drawProject(checkedDraw(gen, corner));
});

/** `count` project files from a seed, the same every time. */
export const randomProjects = (seed: number, count: number): readonly ProjectJson[] =>
  Array.from({ length: count }, (_, index) => drawProject(seededDraw(Math.imul(seed, 0x9e3779b1) + index * 7919, index % 4 === 0)));
