import { inches } from '../../base/quantity.ts';
import { planPoint, type PlanPoint } from '../../base/points.ts';
import { say } from '../../text/index.ts';
import { printLength } from '../../units/index.ts';
import { parseSection, type Section } from '../../steel/index.ts';
import { DEFAULTS } from '../defaults.ts';
import { catwalkSections } from '../catwalk-steel.ts';
import { gateSections } from '../gate-steel.ts';
import { holdingGate, returnGate } from '../holding-gate.ts';
import { type ProjectFile } from '../schema/project.ts';
import { otherSide, type Brief, type RunBrief } from '../types.ts';
import { sortOpenings } from '../sort-openings.ts';
import { builtDrafts, finishFences, type FenceDrafts } from './fence-drafts.ts';
import { fenceOfRun } from './fence-of-run.ts';
import { noteFenceDefaults } from './fence-defaults.ts';
import { type Filler } from './filler.ts';
import { resolveHoldingPens, resolveReturn } from './holding-pens.ts';
import { resolveCatwalks } from './catwalks.ts';
import { resolveOpenings } from './openings.ts';
import { resolveShop, type ShopTables } from './shop.ts';
import { resolveRamps } from './ramps.ts';
import { noteSubjectDefaults } from './subjects.ts';
import { resolveCattle, resolveRevision, resolveRevisions, resolveSite } from './surroundings.ts';
import { resolveFloors, resolvePad, resolveSortPens } from './yard.ts';

/** What the rules looked up on the way. */
export interface Looked {
  readonly fences: FenceDrafts;
  readonly tables: ShopTables;
  /** Null where the file leaves it to the default. */
  readonly pivotPost: Section | null;
  /** Posts that gates hang on, by where the file names them. */
  readonly hingePosts: ReadonlyMap<string, Section>;
}

function told<T>(value: T | undefined, path: string): T {
  if (value === undefined) throw new Error(`${path} is unknown though no fault was told`);
  return value;
}

function defaultPivotPost(): Section {
  const section = parseSection(DEFAULTS.crowdPen.pivotPost);
  if (section === null) throw new Error(`no such section: ${DEFAULTS.crowdPen.pivotPost}`);
  return section;
}

function resolveAlley(file: ProjectFile, filler: Filler): readonly RunBrief[] {
  if (file.alley?.runs !== undefined) return file.alley.runs;
  const length = inches(DEFAULTS.alleyLength);
  filler.note('alley.runs', say('term.straight-run', { length: printLength(length, filler.units) }));
  return [{ kind: 'straight', length }];
}

function resolveCrowdPen(file: ProjectFile, looked: Looked, filler: Filler): Brief['crowdPen'] {
  const pen = file.crowdPen ?? {};
  const { sweep, hand, funnelAngle, gateClearance, pivotPost } = DEFAULTS.crowdPen;
  if (looked.pivotPost === null) filler.note('crowdPen.pivotPost', pivotPost);
  return {
    radius: told(pen.radius, 'crowdPen.radius'),
    sweep: filler.angle('crowdPen.sweep', pen.sweep, sweep),
    hand: filler.word('crowdPen.hand', pen.hand, hand),
    funnelAngle: filler.angle('crowdPen.funnelAngle', pen.funnelAngle, funnelAngle),
    gateClearance: filler.length('crowdPen.gateClearance', pen.gateClearance, gateClearance),
    pivotPost: looked.pivotPost ?? defaultPivotPost(),
    pivotLength: pen.pivotLength ?? null,
  };
}

function resolveControl(file: ProjectFile, filler: Filler): Brief['control'] {
  const control = file.control ?? {};
  const point = ([x = NaN, y = NaN]: readonly number[]): PlanPoint => planPoint(x, y);
  if (control.b === undefined) {
    const [x, y] = DEFAULTS.control.b.map((value) => printLength(inches(value), filler.units));
    filler.note('control.b', say('term.point', { x: told(x, 'control.b'), y: told(y, 'control.b') }));
  }
  return {
    b: point(control.b ?? DEFAULTS.control.b),
    c: control.c === undefined ? null : point(control.c),
    note: filler.word('control.note', control.note, ''),
  };
}

function resolveFootings(file: ProjectFile, filler: Filler): Pick<Brief, 'footings' | 'postLoad'> {
  const footings = file.footings ?? {};
  const { diameter, depth, loadHeight, heldAtSurface } = DEFAULTS.footings;
  if (footings.load === undefined) filler.note('footings.load', say('term.none'));
  const height = filler.length('footings.loadHeight', footings.loadHeight, loadHeight);
  const held = filler.flag('footings.heldAtSurface', footings.heldAtSurface, heldAtSurface);
  return {
    footings: {
      diameter: filler.length('footings.diameter', footings.diameter, diameter),
      depth: filler.length('footings.depth', footings.depth, depth),
    },
    postLoad: footings.load === undefined || footings.load === null ? null : { load: footings.load, height, heldAtSurface: held },
  };
}

/** The brief of a project without faults, each default noted. Throws where a fault was overlooked. */
export function resolveBrief(file: ProjectFile, looked: Looked, filler: Filler): Brief {
  const { fences } = looked;
  const pen = resolveCrowdPen(file, looked, filler);
  const openings = resolveOpenings(file, looked.hingePosts);
  const sortPens = resolveSortPens(file);
  const returnAlley = resolveReturn(file);
  const holdingPens = resolveHoldingPens(file, looked.hingePosts);
  const finished = finishFences(fences);
  const side = otherSide(pen.hand);
  const catwalks = resolveCatwalks(file);
  const gates = [...openings, ...sortOpenings(sortPens), ...holdingPens.map((one) => ({ ...holdingGate(one), side })), ...(returnAlley === null ? [] : [returnGate(returnAlley)])];
  noteFenceDefaults(fences, filler);
  noteSubjectDefaults(file, filler);
  const built = builtDrafts(fences, file).flatMap(({ rail, post }) => [rail?.value, post?.value]).filter((section) => section !== undefined);
  if (file.marks === undefined) filler.note('marks', say('term.none'));
  if (file.units === undefined) filler.note('units', filler.units);
  return {
    title: told(file.title, 'title'),
    client: filler.word('client', file.client, ''),
    units: filler.units,
    paper: filler.word('paper', file.paper, DEFAULTS.paper),
    revision: resolveRevision(file, filler),
    revisions: resolveRevisions(file, filler),
    site: resolveSite(file, filler),
    cattle: resolveCattle(file, filler),
    alley: { runs: resolveAlley(file, filler) },
    crowdPen: pen,
    chute: { width: told(file.chute?.width, 'chute.width'), runs: told(file.chute?.runs, 'chute.runs') },
    fences: finished,
    ramps: resolveRamps(file),
    ...resolveFootings(file, filler),
    floors: resolveFloors(file, filler),
    squeezePad: resolvePad(file),
    holdingPens,
    returnAlley,
    sortPens,
    shop: resolveShop(file, looked.tables, [...built, pen.pivotPost, ...gateSections(gates, (run, side) => fenceOfRun(finished, run, side)), ...catwalkSections(catwalks)], filler),
    control: resolveControl(file, filler),
    marks: file.marks ?? {},
    openings,
    catwalks,
  };
}
