import loadHighs, { type LegacyHighsSolution as HighsSolution } from 'highs';
import { type LinearAnswer, type LinearProblem, type LinearSolver } from '../../core/shop/linear-solver.ts';

/** Terms on a line of the model: the format asks for short lines. */
const TERMS_A_LINE = 40;
const SEED = 1;

/**
 * HiGHS behind the core's interface. Only the status "Optimal" is taken for an answer, for a model that it can't read comes back as
 * "Empty" without an error.
 */
export async function createSolver(): Promise<LinearSolver> {
  const highs = await loadHighs();
  return (problem, effort) => {
    if (problem.columns.length === 0) return { kind: 'infeasible' };
    const options = {
      output_flag: false, random_seed: SEED, threads: 1, parallel: 'off', mip_max_nodes: effort.nodes, mip_rel_gap: 0, mip_abs_gap: 0,
      ...(effort.seconds === null ? {} : { time_limit: Math.max(0.01, effort.seconds) }),
    } as const;
    return answerOf(problem, highs.solve(modelText(problem), options));
  };
}

/** Statuses that say nothing of the problem: a mistake of ours in the model. */
const BROKEN = /error|^Empty$|^Not Set$|unbounded|^Unbounded$/i;

function answerOf(problem: LinearProblem, solution: HighsSolution): LinearAnswer {
  const amounts = (): readonly number[] =>
    problem.columns.map((_, index) => {
      const column = solution.Columns[`x${String(index)}`];
      return column !== undefined && 'Primal' in column ? column.Primal : 0;
    });
  if (solution.Status === 'Infeasible') return { kind: 'infeasible' };
  if (BROKEN.test(solution.Status)) throw new Error(`the solver answers "${solution.Status}"`);
  if (solution.Status !== 'Optimal') {
    const found = amounts();
    return { kind: 'stopped', amounts: found.some((amount) => amount > 0) ? found : null };
  }
  const duals = new Map(solution.Rows.flatMap((row) => ('Dual' in row ? [[row.Name, row.Dual] as const] : [])));
  return { kind: 'optimal', cost: solution.ObjectiveValue, amounts: amounts(), prices: problem.rows.map((_, index) => duals.get(`r${String(index)}`) ?? 0) };
}

/** The problem in the LP format of linear solvers. Rows with both bounds equal are written once. */
export function modelText(problem: LinearProblem): string {
  const inRow: string[][] = problem.rows.map(() => []);
  problem.columns.forEach((column, index) => {
    for (const [row, amount] of column.entries) inRow[row]?.push(term(amount, index));
  });
  const lines = ['Minimize', ' cost:', ...wrapped(problem.columns.map((column, index) => term(column.cost, index))), 'Subject To'];
  problem.rows.forEach(([least, greatest], row) => {
    const terms = inRow[row] ?? [];
    // A row without a column can't be met by any: it is written over one that counts for nothing.
    const sum = terms.length > 0 ? terms : ['+ 0 x0'];
    if (least !== null && least === greatest) lines.push(` r${String(row)}:`, ...wrapped(sum), ` = ${String(least)}`);
    else {
      if (least !== null) lines.push(` r${String(row)}:`, ...wrapped(sum), ` >= ${String(least)}`);
      if (greatest !== null) lines.push(` ${least === null ? `r${String(row)}` : `g${String(row)}`}:`, ...wrapped(sum), ` <= ${String(greatest)}`);
    }
  });
  if (problem.whole) lines.push('General', ...wrapped(problem.columns.map((_, index) => `x${String(index)}`)));
  return [...lines, 'End', ''].join('\n');
}

const term = (amount: number, index: number): string => `${amount < 0 ? '-' : '+'} ${String(Math.abs(amount))} x${String(index)}`;

function wrapped(terms: readonly string[]): string[] {
  const lines: string[] = [];
  for (let at = 0; at < terms.length; at += TERMS_A_LINE) lines.push(` ${terms.slice(at, at + TERMS_A_LINE).join(' ')}`);
  return lines;
}
