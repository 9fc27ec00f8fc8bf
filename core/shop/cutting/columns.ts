/** Patterns made one by one as the linear program asks for them (Gilmore and Gomory, Operations Research 9, 1961), and the bound that it proves. */
import { type LinearSolver } from '../linear-solver.ts';
import { bestPattern } from './best-pattern.ts';
import { tablePattern } from './table-pattern.ts';
import { type CuttingJob, type Pattern, type Size } from './types.ts';

const ROUNDS = 400;
/** A pattern that would gain less than this is not looked for: what the solver itself is sure to. */
export const GAIN = 1e-7;

/** Seconds left of those that a person allowed; null: none were asked for. */
export type TimeLeft = () => number | null;

export interface Generated {
  readonly patterns: readonly Pattern[];
  /** Cost that no plan can be under. */
  readonly bound: number;
  /** What each size is worth, and what a bar on the rack is worth, by the last program. */
  readonly values: readonly number[];
  readonly rackValues: readonly number[];
  /** Whether no pattern is left that would lower the program's cost. */
  readonly complete: boolean;
}

export const patternKey = ({ stock, counts }: Pattern): string => `${String(stock)}:${counts.join(',')}`;

/** Rows: one a size (at least what is needed), one a stock length on the rack (at most what is there). */
export function rowsOf(job: CuttingJob, sizes: readonly Size[]): (readonly [number | null, number | null])[] {
  return [...sizes.map((size) => [size.quantity, null] as const), ...job.stock.map((stock) => [null, stock.count ?? 1e9] as const)];
}

export const columnOf = (pattern: Pattern, costs: readonly number[], sizes: number) => ({
  name: patternKey(pattern),
  cost: costs[pattern.stock]!,
  entries: [
    ...pattern.counts.flatMap((count, row) => (count > 0 ? [[row, count] as const] : [])),
    [sizes + pattern.stock, 1] as const,
  ],
});

/** Adds patterns to those given until none would lower the cost, or the rounds are over. `costs`: of a bar of each stock length. */
export function generateColumns(job: CuttingJob, sizes: readonly Size[], costs: readonly number[], first: readonly Pattern[], solve: LinearSolver, left: TimeLeft): Generated {
  const patterns = new Map(first.map((pattern) => [patternKey(pattern), pattern]));
  const rows = rowsOf(job, sizes);
  const taken = sizes.map((size) => size.length + job.kerf);
  let bound = 0;
  let values: readonly number[] = [];
  let rackValues: readonly number[] = [];
  let complete = false;
  for (let round = 0; round < ROUNDS && !complete && (left() ?? 1) > 0; round += 1) {
    const list = [...patterns.values()];
    const answer = solve({ columns: list.map((pattern) => columnOf(pattern, costs, sizes.length)), rows, whole: false }, { nodes: 0, seconds: null });
    if (answer.kind !== 'optimal') break;
    values = answer.prices.slice(0, sizes.length).map((price) => Math.max(0, price));
    rackValues = job.stock.map((_, index) => Math.min(0, answer.prices[sizes.length + index] ?? 0));
    // Most that a bar of each length is worth for its cost: the prices over it are a proof of the bound (Farley, 1990).
    let over = 1;
    let news = 0;
    for (const [stock, { length }] of job.stock.entries()) {
      const cost = costs[stock]! - rackValues[stock]!;
      const room = length + job.kerf;
      const most = taken.map((takes, index) => Math.min(sizes[index]!.quantity, Math.floor(room / takes)));
      // Several a round: each further one of the sizes that those before it left out.
      for (let left = values, first = true; ; first = false) {
        const knapsack = { sizes: taken, values: left, most, room };
        const packed = tablePattern(knapsack) ?? bestPattern(knapsack);
        // A bar that costs nothing proves nothing where it is worth something.
        if (first) over = Math.max(over, cost > 0 ? packed.atMost / cost : packed.atMost > GAIN ? Infinity : 1);
        if (packed.value <= cost + GAIN) break;
        const pattern = { stock, counts: packed.counts };
        if (patterns.has(patternKey(pattern))) break;
        patterns.set(patternKey(pattern), pattern);
        news += 1;
        left = left.map((value, index) => (packed.counts[index]! > 0 ? 0 : value));
      }
    }
    const worth = sizes.reduce((sum, size, index) => sum + size.quantity * values[index]!, 0) +
      job.stock.reduce((sum, stock, index) => sum + (stock.count ?? 0) * rackValues[index]!, 0);
    bound = Math.max(bound, worth / over);
    complete = news === 0;
  }
  return { patterns: [...patterns.values()], bound, values, rackValues, complete };
}
