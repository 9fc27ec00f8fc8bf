/** Cutting pieces from stock lengths. Lengths are whole steps of 1/10,000 in, so that what adds up to a bar fits it. */

/** Whole steps of `CUT_STEP`. */
export type Steps = number & { readonly __steps: never };

export interface Need {
  readonly mark: string;
  /** What is cut: the order length of a rolled piece. */
  readonly length: Steps;
  readonly quantity: number;
}

export interface StockLength {
  readonly length: Steps;
  /** Of one bar; null where none is given. */
  readonly price: number | null;
  /** Bars on the rack; null: as many as are asked for. */
  readonly count: number | null;
}

export interface CuttingJob {
  readonly needs: readonly Need[];
  readonly stock: readonly StockLength[];
  /** What the saw takes between two pieces. */
  readonly kerf: Steps;
}

export interface Cut {
  readonly mark: string;
  readonly length: Steps;
  /** What the saw takes after it; 0 after a piece that ends at the bar's end. */
  readonly kerf: Steps;
}

export interface CutBar {
  /** Which of the job's stock it is. */
  readonly from: number;
  readonly stock: Steps;
  readonly cuts: readonly Cut[];
  /** What is left of the bar. */
  readonly drop: Steps;
}

export interface CutPlan {
  readonly bars: readonly CutBar[];
  /** No plan can use fewer bars. */
  readonly atLeast: number;
  /** Cost of the bars, and what no plan can be under; null where a stock length has no price. */
  readonly cost: { readonly total: number; readonly atLeast: number } | null;
}

/** How often each size is cut from a bar of one stock length. */
export interface Pattern {
  readonly stock: number;
  readonly counts: readonly number[];
}

/** A length that is needed, and how often. Longest first. */
export interface Size {
  readonly length: Steps;
  readonly quantity: number;
}
