import { type Brief } from '../../core/brief/index.ts';
import { type Font } from '../../core/drafting/font.ts';
import { createPipeline, type Pipeline } from '../../core/package/index.ts';
import { inches } from '../../core/base/quantity.ts';
import { designOf, grownProject } from './grown-project.ts';
import { best, ms } from './timing.ts';

const TIMES = [1, 4, 16] as const;
const RUNS = 5;
/** A frame of a screen that is drawn 60 times a second. */
const FRAME = 1000 / 60;

/** A brief as a drag leaves it: the crowd pen's radius a little larger each time, so that nothing of the last one stands. */
const dragged = (brief: Brief, run: number): Brief => ({ ...brief, crowdPen: { ...brief.crowdPen, radius: inches(brief.crowdPen.radius + (run + 1) / 64) } });

/** What the pipeline's parts take for 1, 4 and 16 times the demo's panels, and how that grows. */
export function growthRows(font: Font): string[][] {
  const jobs: readonly (readonly [string, (pipeline: Pipeline, brief: Brief) => void])[] = [
    ['layout and pieces', (pipeline, brief) => void work(pipeline, brief)],
    ['layout, pieces, checks (drag)', (pipeline, brief) => void pipeline.findings(work(pipeline, brief))],
    ['layout, pieces, checks, plan (drag)', (pipeline, brief) => {
      const design = work(pipeline, brief);
      pipeline.findings(design);
      pipeline.plan(design);
    }],
    ['schedules', (pipeline, brief) => void pipeline.schedules(work(pipeline, brief))],
    ['all drawings', (pipeline, brief) => void pipeline.drawings(work(pipeline, brief))],
  ];
  const projects = TIMES.map((times) => grownProject(font, times));
  const rows = [['', ...projects.map((project, index) => `x${String(TIMES[index])} (${String(project.panels)} panels)`), 't16/t4', 'aim']];
  for (const [name, job] of jobs) {
    const alone = name !== 'layout and pieces' && !name.includes('drag');
    const took = projects.map(({ text }) => {
      const { brief } = designOf(font, text);
      const pipeline = createPipeline(font);
      return best(RUNS, (run) => {
        const next = dragged(brief, run);
        // What stands on its own is timed without the layout that it needs.
        if (alone) work(pipeline, next);
        return next;
      }, (next) => { job(pipeline, next); });
    });
    const aim = name.includes('drag') ? `x1 under ${ms(FRAME)}` : name === 'all drawings' ? 'x1 under 250 ms' : '';
    rows.push([name, ...took.map(ms), ((took[2] ?? NaN) / (took[1] ?? NaN)).toFixed(2), aim === '' ? 'growth 4.6' : `${aim}, growth 4.6`]);
  }
  return rows;
}

function work(pipeline: Pipeline, brief: Brief): Parameters<Pipeline['findings']>[0] {
  const worked = pipeline.design(brief);
  if (!worked.ok) throw new Error(JSON.stringify(worked.faults));
  return worked.design;
}
