/** What a solver of linear programs must do for us. It is handed to the core, as the PDF library is. */

export interface LinearColumn {
  readonly name: string;
  /** What one of it costs. */
  readonly cost: number;
  /** Rows that it counts in, and how much. */
  readonly entries: readonly (readonly [row: number, amount: number])[];
}

/** Least cost of columns from 0 up, each row's sum between its two bounds (null: none). */
export interface LinearProblem {
  readonly columns: readonly LinearColumn[];
  readonly rows: readonly (readonly [least: number | null, greatest: number | null])[];
  /** Whether columns must be whole numbers. */
  readonly whole: boolean;
}

/** Where the work ends: by counts, which come out the same on any machine, and by seconds only where a person asked for them. */
export interface Effort {
  /** Branches of the search for whole numbers. */
  readonly nodes: number;
  readonly seconds: number | null;
}

export type LinearAnswer =
  | { readonly kind: 'optimal'; readonly cost: number; readonly amounts: readonly number[]; readonly prices: readonly number[] }
  /** The effort ended first. `amounts` is the best found, null where none was. */
  | { readonly kind: 'stopped'; readonly amounts: readonly number[] | null }
  | { readonly kind: 'infeasible' };

export type LinearSolver = (problem: LinearProblem, effort: Effort) => LinearAnswer;
