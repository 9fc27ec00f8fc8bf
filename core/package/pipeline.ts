/**
 * The one graph of what follows from what: brief > layout > parts > findings, schedules, drawings. Each step is done when it is first
 * asked for, and again only when something that it read has changed. A drag asks for the design, its findings and its
 * plan alone; a package asks for everything.
 */
import { boardPicture, type BoardOptions, type BoardPicture } from '../board/index.ts';
import { readBrief, type Brief, type DefaultUsed, type Fault } from '../brief/index.ts';
import { check, type Finding } from '../checks/index.ts';
import { draft } from '../drafting/draft.ts';
import { type Font } from '../drafting/font.ts';
import { type Sheet } from '../drafting/primitives.ts';
import { drawSet, titleBlockOf } from '../drawings/index.ts';
import { planDrawings } from '../drawings/plan.ts';
import { type Layout, layOut } from '../layout/index.ts';
import { makeParts, type Parts } from '../parts/index.ts';
import { type Stations, stations } from '../schedules/index.ts';
import { type CutList, type CutListProgress, planCutList, type SectionJob, sectionJobs } from '../shop/cut-list/index.ts';
import { type LinearSolver } from '../shop/linear-solver.ts';
import { shopPlates, type ShopPlates } from '../shop/nesting/index.ts';
import { reuse } from './reuse.ts';
import { scheduleRows, type Schedules } from './schedule-rows.ts';
import { tracked } from './tracked.ts';

export type Units = 'in' | 'mm';

/** A brief set out, with its pieces. */
export interface Design {
  readonly brief: Brief;
  readonly layout: Layout;
  readonly parts: Parts;
}

/** An earlier issue, with its cut list where that is planned. */
export interface EarlierIssue extends Design {
  readonly cuts?: CutList | null;
}

type Worked<T> = ({ readonly ok: true } & T) | { readonly ok: false; readonly faults: readonly Fault[] };

export interface Pipeline {
  /** Reads a project's text; `units` where somebody asked for others than the project's. */
  read(text: string, units: Units | null): Worked<{ readonly brief: Brief; readonly defaults: readonly DefaultUsed[] }>;
  design(brief: Brief): Worked<{ readonly design: Design }>;
  findings(design: Design): readonly Finding[];
  /** The plan alone. */
  plan(design: Design): readonly Sheet[];
  /** The live plan at a scale of the screen: what a drag shows. */
  board(design: Design, options: BoardOptions): BoardPicture;
  /** What the table cuts. */
  plates(design: Design): ShopPlates;
  schedules(design: Design): Schedules;
  /** The path alone: a drag asks for it, and not for the nests that the other schedules follow from. */
  stations(design: Design): Stations;
  /** What has to be cut from bars: the very same thing as before where nothing of it has changed. */
  cutJobs(design: Design): readonly SectionJob[];
  /** Plans the cut list, or gives the one that was last planned for these jobs. */
  cutList(jobs: readonly SectionJob[], solve: LinearSolver): Generator<CutListProgress, CutList>;
  /** The whole set, in its order. Without a cut list it has no drawings of it. */
  drawings(design: Design, cuts?: CutList | null, since?: EarlierIssue | null): readonly Sheet[];
}

export function createPipeline(font: Font): Pipeline {
  let last: Brief | null = null;
  const layout = tracked((brief: Brief) => layOut(brief));
  const parts = tracked((brief: Brief, of: Layout) => makeParts(brief, of));
  const findings = tracked((brief: Brief, of: Layout, made: Parts) => check(brief, of, made));
  const plates = tracked((brief: Brief, made: Parts) => shopPlates(brief, made));
  const schedules = tracked((brief: Brief, of: Layout, made: Parts, cut: ShopPlates) => scheduleRows(brief, of, made, cut));
  const walk = tracked((brief: Brief, of: Layout) => stations(brief, of));
  const plan = tracked((brief: Brief, of: Layout, made: Parts) => {
    const block = titleBlockOf(brief);
    return planDrawings({ brief, layout: of, parts: made, font }).map((drawing) => draft(font, block, drawing).sheet);
  });
  // Figure by figure: the options that ask for the same are the same, whoever asks.
  const board = tracked((brief: Brief, of: Layout, made: Parts, scale: number, sizes: boolean, marks: boolean, sights: boolean, dragged: string | null) =>
    boardPicture({ brief, layout: of, parts: made, font }, { scale, sizes, marks, sights, dragged }));
  const drawings = tracked((brief: Brief, of: Layout, made: Parts, cuts: CutList | null, since: EarlierIssue | null) => drawSet({ brief, layout: of, parts: made, font, cuts, since }));
  const jobs = tracked((brief: Brief, made: Parts) => sectionJobs(brief, made));
  let lastJobs: readonly SectionJob[] | null = null;
  let cut: { readonly jobs: readonly SectionJob[]; readonly list: CutList } | null = null;
  return {
    read: (text, units) => {
      const read = readBrief(text);
      if (!read.ok) return read;
      last = reuse(last, units === null ? read.brief : { ...read.brief, units });
      return { ok: true, brief: last, defaults: read.defaults };
    },
    design: (brief) => {
      const laid = layout(brief);
      if (!laid.ok) return laid;
      const made = parts(brief, laid.layout);
      return made.ok ? { ok: true, design: { brief, layout: laid.layout, parts: made.parts } } : made;
    },
    findings: (design) => findings(design.brief, design.layout, design.parts),
    plan: (design) => plan(design.brief, design.layout, design.parts),
    board: ({ brief, layout: of, parts: made }, { scale, sizes, marks, sights, dragged }) => board(brief, of, made, scale, sizes, marks, sights, dragged),
    cutJobs: (design) => {
      lastJobs = reuse(lastJobs, jobs(design.brief, design.parts));
      return lastJobs;
    },
    *cutList(of, solve) {
      if (cut?.jobs !== of) cut = { jobs: of, list: yield* planCutList(of, solve) };
      return cut.list;
    },
    drawings: (design, cuts = null, since = null) => drawings(design.brief, design.layout, design.parts, cuts, since),
    stations: (design) => walk(design.brief, design.layout),
    plates: (design) => plates(design.brief, design.parts),
    schedules: (design) => schedules(design.brief, design.layout, design.parts, plates(design.brief, design.parts)),
  };
}
