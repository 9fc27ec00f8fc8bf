/** Cutting from stock: known sets and the demo, the plan beside longest-first. */
import { planCuts, type CutPlan, type CuttingJob } from '../../core/shop/cutting/index.ts';
import { planCutList, sectionJobs, tapeCutList, type CutList } from '../../core/shop/cut-list/index.ts';
import { type Font } from '../../core/drafting/font.ts';
import { createSolver } from '../../electron/solver/highs.ts';
import { jobOf, triplets } from '../support/known-cuts.ts';
import { designOf, grownProject } from './grown-project.ts';

/** Rows for `npm run bench`. */
export async function cuttingRows(font: Font): Promise<readonly (readonly string[])[]> {
  const solve = await createSolver();
  const sets = triplets().map(([name, sizes]): readonly string[] => {
    const job = jobOf(sizes.map((size) => [size, 1] as const), [1000]);
    const from = performance.now();
    const plans = [...told(job, solve)];
    return [name, String(plans[0]?.bars.length ?? 0), String(plans.at(-1)?.bars.length ?? 0), String(plans.at(-1)?.atLeast ?? 0), `${((performance.now() - from) / 1000).toFixed(2)} s`];
  });
  const { brief, parts } = designOf(font, grownProject(font, 1).text);
  const jobs = sectionJobs(brief, parts);
  const from = performance.now();
  const list = whole(planCutList(jobs, solve));
  const took = performance.now() - from;
  const tape = tapeCutList(jobs);
  const demo = list.map((section, i): readonly string[] => [
    `demo, ${section.section}: ${used(list.slice(i, i + 1))} used, longest-first ${used(tape.slice(i, i + 1))}`,
    String(tape[i]?.bars.length ?? 0), String(section.bars.length), String(section.atLeast), i === 0 ? `${(took / 1000).toFixed(2)} s for all` : '',
  ]);
  return [['cutting from stock', 'longest-first', 'bars', 'at least', 'took'], ...sets, ...demo];
}

function* told(job: CuttingJob, solve: Parameters<typeof planCuts>[1]): Generator<CutPlan> {
  const plans = planCuts(job, solve);
  for (;;) {
    const step = plans.next();
    if (step.done !== true) yield step.value;
    else if ('kind' in step.value) throw new Error(step.value.kind);
    else { yield step.value; return; }
  }
}

function whole(plans: ReturnType<typeof planCutList>): CutList {
  for (;;) {
    const step = plans.next();
    if (step.done === true) return step.value;
  }
}

function used(list: CutList): string {
  const bars = list.flatMap((section) => section.bars);
  const stock = bars.reduce((sum, bar) => sum + bar.stock.length, 0);
  const pieces = bars.reduce((sum, bar) => sum + bar.cuts.reduce((cut, { length }) => cut + length, 0), 0);
  return `${((100 * pieces) / stock).toFixed(1)} %`;
}
