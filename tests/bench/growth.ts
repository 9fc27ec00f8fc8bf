import { type Brief } from '../../core/brief/index.ts';
import { type BoardOptions } from '../../core/board/index.ts';
import { type Font } from '../../core/drafting/font.ts';
import { createPipeline, type Design, type Pipeline } from '../../core/package/index.ts';
import { inches } from '../../core/base/quantity.ts';
import { designOf, grownProject } from './grown-project.ts';
import { best, ms } from './timing.ts';

const TIMES = [1, 4, 16] as const;
/** A frame of a screen that is drawn 60 times a second. */
const FRAME = 1000 / 60;
/** Runs before any is timed, until the engine has compiled what is timed, and runs that are timed. */
const DRAG = { warm: 30, runs: 25 } as const;
const WHOLE = { warm: 1, runs: 4 } as const;

/** What a designer sees: the demo fills a screen at this scale, screen inches an inch of the plan. */
const BOARD: BoardOptions = { scale: 1 / 60, sizes: true, marks: true, sights: true, dragged: null };
const RADIUS = 'crowdPen.radius';

interface Job {
  readonly name: string;
  readonly aim: string;
  readonly runs: typeof DRAG | typeof WHOLE;
  /** Whether the layout and the pieces are made before, untimed. */
  readonly alone: boolean;
  readonly work: (pipeline: Pipeline, design: () => Design) => void;
}

const drag = (name: string, work: Job['work']): Job => ({ name, aim: `x1 under ${ms(FRAME)}`, runs: DRAG, alone: false, work });
const step = (name: string, runs: Job['runs'], work: Job['work'], aim = ''): Job => ({ name, aim, runs, alone: true, work });

const JOBS: readonly Job[] = [
  drag('drag: layout and pieces', (_, design) => void design()),
  drag('drag: and checks', (pipeline, design) => void pipeline.findings(design())),
  drag('drag: and the board, one size', (pipeline, design) => {
    pipeline.findings(design());
    pipeline.board(design(), { ...BOARD, dragged: RADIUS });
  }),
  drag('drag: and the board, all of it', (pipeline, design) => {
    pipeline.findings(design());
    pipeline.board(design(), BOARD);
  }),
  step('board, all of it, close by', DRAG, (pipeline, design) => void pipeline.board(design(), { ...BOARD, scale: 1 / 4 })),
  step('schedules', DRAG, (pipeline, design) => void pipeline.schedules(design())),
  step('plan on paper', WHOLE, (pipeline, design) => void pipeline.plan(design())),
  step('all drawings', WHOLE, (pipeline, design) => void pipeline.drawings(design()), 'x1 under 250 ms'),
];

/** A brief as a drag leaves it: the crowd pen's radius a little larger each time, so that nothing of the last one stands. */
const dragged = (brief: Brief, run: number): Brief => ({ ...brief, crowdPen: { ...brief.crowdPen, radius: inches(brief.crowdPen.radius + (run + 1) / 64) } });

/** What the pipeline's parts take for 1, 4 and 16 times the demo's panels, and how that grows. */
export function growthRows(font: Font): string[][] {
  const projects = TIMES.map((times) => grownProject(font, times));
  const rows = [['', ...projects.map((project, index) => `x${String(TIMES[index])} (${String(project.panels)} panels)`), 't16/t4', 'aim']];
  const briefs = projects.map(({ text }) => designOf(font, text).brief);
  for (const job of JOBS) {
    const took = briefs.map((brief) => timed(font, brief, job));
    const growth = (took[2] ?? NaN) / (took[1] ?? NaN);
    rows.push([job.name, ...took.map(ms), growth.toFixed(2), job.aim === '' ? 'growth 4.6' : `${job.aim}, growth 4.6`]);
  }
  return rows;
}

function timed(font: Font, brief: Brief, { runs: { warm, runs }, alone, work }: Job): number {
  const pipeline = createPipeline(font);
  const prepare = (run: number): (() => Design) => {
    const next = dragged(brief, run);
    const design = (): Design => designed(pipeline, next);
    if (alone) design();
    return design;
  };
  for (let run = 0; run < warm; run += 1) work(pipeline, prepare(run));
  return best(runs, (run) => prepare(warm + run), (design) => { work(pipeline, design); });
}

function designed(pipeline: Pipeline, brief: Brief): Design {
  const worked = pipeline.design(brief);
  if (!worked.ok) throw new Error(JSON.stringify(worked.faults));
  return worked.design;
}
