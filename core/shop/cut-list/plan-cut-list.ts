import { inches } from '../../base/quantity.ts';
import { type CutBar, type CutPlan, fromSteps, planCuts } from '../cutting/index.ts';
import { type LinearSolver } from '../linear-solver.ts';
import { type BarPlan, type CutList, type SectionCuts, type SectionJob } from './types.ts';

/** How far the work is: the best plan so far of one section of several. */
export interface CutListProgress {
  readonly cuts: SectionCuts;
  /** Sections done before it, of how many. */
  readonly done: number;
  readonly total: number;
}

/**
 * The cut list of a project, section by section, each with the fewest bars or the least cost. Tells of each plan that is better than
 * the one before; whoever asks for no more ends the work. Bounded by counts, so that the same pieces give the same list.
 */
export function* planCutList(jobs: readonly SectionJob[], solve: LinearSolver): Generator<CutListProgress, CutList> {
  const list: SectionCuts[] = [];
  for (const job of jobs) {
    const plans = planCuts(job.job, solve);
    for (;;) {
      const step = plans.next();
      if (step.done !== true) {
        yield { cuts: sectionCuts(job, step.value), done: list.length, total: jobs.length };
        continue;
      }
      // Every piece was held against stock that can be bought.
      if ('kind' in step.value) throw new Error(`no plan for ${job.section}: ${JSON.stringify(step.value)}`);
      list.push(sectionCuts(job, step.value));
      break;
    }
  }
  return list;
}

/** The list that a person makes with a tape, longest piece first: nothing is proven of it. */
export const tapeCutList = (jobs: readonly SectionJob[]): CutList =>
  jobs.map((job) => {
    const first = planCuts(job.job, () => { throw new Error('longest-first asks nobody'); }).next().value;
    if ('kind' in first) throw new Error(`no plan for ${job.section}: ${JSON.stringify(first)}`);
    return sectionCuts(job, first);
  });

function sectionCuts(job: SectionJob, plan: CutPlan): SectionCuts {
  return { section: job.section, keepDrop: job.keepDrop, bars: plan.bars.map((bar) => barPlan(job, bar)), atLeast: plan.atLeast, cost: plan.cost };
}

function barPlan({ bars, trim, keepDrop }: SectionJob, bar: CutBar): BarPlan {
  const stock = bars[bar.from];
  if (stock === undefined) throw new Error(`no stock ${String(bar.from)}`);
  const cuts = bar.cuts.map(({ mark, length, kerf }) => ({ mark, length: fromSteps(length), kerf: fromSteps(kerf) }));
  const taken = bar.cuts.reduce((sum, { length, kerf }) => sum + length + kerf, 0);
  // The stock's own length, which need be no whole number of steps: what is left of it is told to the same figure.
  const drop = bar.drop === 0 ? inches(0) : inches(Math.max(0, stock.length - trim - fromSteps(taken as CutBar['stock'])));
  return { stock, trim, cuts, drop, kept: drop > 0 && drop >= keepDrop };
}
