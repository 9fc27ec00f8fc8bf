import { type Effort, type LinearSolver } from '../linear-solver.ts';
import { allPatterns } from './all-patterns.ts';
import { columnOf, GAIN, generateColumns, type Generated, patternKey, rowsOf, type TimeLeft } from './columns.ts';
import { longestFirst } from './longest-first.ts';
import { layOutBars } from './lay-out-bars.ts';
import { type CutPlan, type CuttingJob, type Need, type Pattern, type Size, type Steps } from './types.ts';

/** A plan that can be cut, and how good it is known to be. Each is at least as good as the one before. */
export type CutProgress = CutPlan;

export type CutFault =
  | { readonly kind: 'too-long'; readonly mark: string; readonly length: Steps; readonly longest: Steps }
  | { readonly kind: 'rack-empty' };

/** Weight of a bought bar's length beside the bar itself: of plans with as few bars the one that buys least steel, the rack used first. */
const LENGTH_WEIGHT = 1e-5;
const SURE = 1e-6;
/** Patterns that one program is given, and branches of its search. */
const PATTERNS = 40_000;
const NODES = 4000;
/** The same where the bars are as few as can be and only their cost or length could be less. */
const FINE_PATTERNS = 4000;
const FINE_NODES = 200;

/**
 * Fewest bars, or least cost where every stock length has a price: a linear program over patterns gives the bound, a search for whole
 * numbers over its patterns a plan, and where the two differ all patterns that a better plan could use are tried. Yields each plan that
 * is better than the one before, longest-first the first of them, so that there is a good one at any moment; returns the last.
 */
export function* planCuts(job: CuttingJob, solve: LinearSolver, left: TimeLeft = () => null): Generator<CutProgress, CutPlan | CutFault> {
  const fault = faultOf(job);
  if (fault !== null) return fault;
  const sizes = sizesOf(job.needs);
  if (sizes.length === 0) return { bars: [], atLeast: 0, cost: null };
  const priced = job.stock.every((stock) => stock.price !== null);
  const longest = Math.max(...job.stock.map((stock) => stock.length));
  const costs = job.stock.map((stock) => (priced ? stock.price! : job.stock.length === 1 ? 1 : 1 + (stock.count === null ? (LENGTH_WEIGHT * stock.length) / longest : 0)));
  const first = longestFirst(job, sizes);
  if (first === null) return { kind: 'rack-empty' };

  let best: readonly Pattern[] = first;
  let atLeast = 1;
  let costAtLeast = 0;
  const costOf = (patterns: readonly Pattern[]): number => patterns.reduce((sum, pattern) => sum + costs[pattern.stock]!, 0);
  const told = (): CutPlan => ({
    bars: layOutBars(job, sizes, best), atLeast, cost: priced ? { total: costOf(best), atLeast: Math.min(costAtLeast, costOf(best)) } : null,
  });
  const take = (found: readonly Pattern[] | null): boolean => {
    if (found === null || costOf(found) >= costOf(best) - SURE) return false;
    best = found;
    return true;
  };
  const sole = job.stock.length === 1;
  const proven = (): boolean => (sole ? best.length <= atLeast : priced && costOf(best) <= costAtLeast + SURE);
  yield told();

  const effort = (): Effort => ({ nodes: best.length <= atLeast ? FINE_NODES : NODES, seconds: left() });
  const made = generateColumns(job, sizes, costs, startPatterns(job, sizes, first), solve, left);
  costAtLeast = made.bound;
  atLeast = Math.max(atLeast, barsAtLeast(job, sizes, priced, made, solve, left));
  if (sole && priced) costAtLeast = Math.max(costAtLeast, atLeast * costs[0]!);
  yield told();
  if (proven()) return told();

  if (take(wholePlan(job, sizes, costs, made.patterns, solve, effort(), null))) yield told();
  // A plan under this cost uses only patterns whose loss, cost less worth, is within what the bound leaves over.
  const isOver = (): boolean => (left() ?? 1) <= 0;
  for (let target = atLeast; !priced && target < best.length && !isOver(); target += 1) {
    const every = patternsWithin(job, sizes, costs, made, target * (1 + LENGTH_WEIGHT) - made.bound + leeway(target), spareOf(job, sizes, target));
    if (every === null) break;
    const answer = wholeAnswer(job, sizes, costs, every, solve, effort(), target);
    if (answer.kind === 'infeasible') {
      atLeast = target + 1;
      continue;
    }
    take(patternsOf(answer, every, job, sizes));
    break;
  }
  if (priced && !isOver()) {
    const every = patternsWithin(job, sizes, costs, made, costOf(best) - made.bound + leeway(best.length), Infinity, FINE_PATTERNS);
    if (every !== null) {
      const answer = wholeAnswer(job, sizes, costs, every, solve, { nodes: FINE_NODES, seconds: left() }, null);
      take(patternsOf(answer, every, job, sizes));
      if (answer.kind === 'optimal') costAtLeast = costOf(best);
    }
  }
  return told();
}

/** A pattern may gain as much as the program leaves unseen; what the others of a plan gain, one of it may lose. */
const leeway = (bars: number): number => SURE + bars * GAIN;

function faultOf(job: CuttingJob): CutFault | null {
  const longest = Math.max(0, ...job.stock.map((stock) => stock.length)) as Steps;
  const need = job.needs.find(({ length, quantity }) => quantity > 0 && length > longest);
  return need === undefined ? null : { kind: 'too-long', mark: need.mark, length: need.length, longest };
}

function sizesOf(needs: readonly Need[]): Size[] {
  const byLength = new Map<Steps, number>();
  for (const { length, quantity } of needs) if (quantity > 0) byLength.set(length, (byLength.get(length) ?? 0) + quantity);
  return [...byLength].map(([length, quantity]) => ({ length, quantity })).sort((a, b) => b.length - a.length);
}

/** What longest-first uses, and bars of one size alone, so that the first program has an answer. */
function startPatterns(job: CuttingJob, sizes: readonly Size[], first: readonly Pattern[]): Pattern[] {
  const alone = sizes.flatMap((size, index) => {
    const stock = job.stock.findIndex(({ length, count }) => length >= size.length && count === null);
    if (stock < 0) return [];
    const fits = Math.floor((job.stock[stock]!.length + job.kerf) / (size.length + job.kerf));
    return [{ stock, counts: sizes.map((_, at) => (at === index ? Math.min(fits, size.quantity) : 0)) }];
  });
  return [...new Map([...first, ...alone].map((pattern) => [patternKey(pattern), pattern])).values()];
}

/** Bars that no plan is under: of the program by bars, or where prices count of one that counts bars. */
function barsAtLeast(job: CuttingJob, sizes: readonly Size[], priced: boolean, made: Generated, solve: LinearSolver, left: TimeLeft): number {
  if (!priced) return Math.ceil(made.bound / (1 + LENGTH_WEIGHT) - SURE);
  const plain = generateColumns(job, sizes, job.stock.map(() => 1), made.patterns, solve, left);
  return Math.ceil(plain.bound - SURE);
}

function patternsWithin(job: CuttingJob, sizes: readonly Size[], costs: readonly number[], made: Generated, loss: number, spare: number, limit = PATTERNS): readonly Pattern[] | null {
  if (!made.complete) return null;
  const all: Pattern[] = [];
  const longest = Math.max(...job.stock.map((stock) => stock.length));
  for (const [stock, { length }] of job.stock.entries()) {
    const room = length + job.kerf;
    const most = sizes.map((size) => Math.min(size.quantity, Math.floor(room / (size.length + job.kerf))));
    const knapsack = { sizes: sizes.map((size) => size.length + job.kerf), values: made.values, most, room };
    const found = allPatterns(knapsack, costs[stock]! - made.rackValues[stock]! - loss, Math.max(0, spare - (longest - length)), limit);
    if (found === null) return null;
    all.push(...found.map((counts) => ({ stock, counts })));
  }
  return all;
}

/**
 * What so many bars of the longest stock leave over in all. Every piece is cut exactly as often as it is needed in some plan of so many
 * bars, if there is one, for what a pattern would cut beyond need can be left out: no bar of it leaves more than this.
 */
function spareOf(job: CuttingJob, sizes: readonly Size[], bars: number): number {
  const longest = Math.max(...job.stock.map((stock) => stock.length)) + job.kerf;
  return bars * longest - sizes.reduce((sum, size) => sum + size.quantity * (size.length + job.kerf), 0);
}

function wholeAnswer(job: CuttingJob, sizes: readonly Size[], costs: readonly number[], patterns: readonly Pattern[], solve: LinearSolver, effort: Effort, bars: number | null) {
  // Where the number of bars is set, each size is cut exactly as often as it is needed.
  const rows = rowsOf(job, sizes).map(([least, greatest]) => [least, bars === null || least === null ? greatest : least] as const);
  const columns = patterns.map((pattern) => {
    const column = columnOf(pattern, costs, sizes.length);
    return bars === null ? column : { ...column, entries: [...column.entries, [rows.length, 1] as const] };
  });
  return solve({ columns, rows: bars === null ? rows : [...rows, [null, bars] as const], whole: true }, effort);
}

function wholePlan(...[job, sizes, costs, patterns, solve, effort, bars]: Parameters<typeof wholeAnswer>): readonly Pattern[] | null {
  return patternsOf(wholeAnswer(job, sizes, costs, patterns, solve, effort, bars), patterns, job, sizes);
}

/** The bars of an answer, without the pieces that it cuts beyond need and the bars that are then empty; null where it has none. */
function patternsOf(answer: ReturnType<typeof wholeAnswer>, patterns: readonly Pattern[], job: CuttingJob, sizes: readonly Size[]): readonly Pattern[] | null {
  if (answer.kind === 'infeasible' || answer.amounts === null) return null;
  const left = sizes.map((size) => size.quantity);
  const bars: Pattern[] = [];
  const racks = job.stock.map((stock) => stock.count ?? Infinity);
  for (const [index, amount] of answer.amounts.entries()) {
    for (let n = Math.round(amount); n > 0; n -= 1) {
      const { stock, counts } = patterns[index]!;
      const cut = counts.map((count, size) => Math.min(count, left[size]!));
      if (cut.every((count) => count === 0)) continue;
      cut.forEach((count, size) => { left[size]! -= count; });
      racks[stock]! -= 1;
      bars.push({ stock, counts: cut });
    }
  }
  return left.some((count) => count > 0) || racks.some((count) => count < 0) ? null : bars;
}
