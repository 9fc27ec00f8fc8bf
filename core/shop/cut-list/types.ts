/** What is cut from bars for a whole project. Plain data. */
import { type Inches } from '../../base/quantity.ts';
import { type CuttingJob } from '../cutting/index.ts';

/** A length that a section is bought in, or that stands on the rack. */
export interface StockBar {
  readonly length: Inches;
  /** Of one; null: none is known. */
  readonly price: number | null;
  /** On the rack; null: as many as are wanted can be bought. */
  readonly count: number | null;
}

/** The pieces of one section and the bars that they may be cut from. */
export interface SectionJob {
  readonly section: string;
  /** Its stock is `bars`, each less the trim. */
  readonly job: CuttingJob;
  readonly bars: readonly StockBar[];
  readonly trim: Inches;
  readonly keepDrop: Inches;
}

export interface BarCut {
  readonly mark: string;
  /** What is cut: the order length of a rolled piece. */
  readonly length: Inches;
  /** What the saw takes after it. */
  readonly kerf: Inches;
}

export interface BarPlan {
  readonly stock: StockBar;
  readonly trim: Inches;
  readonly cuts: readonly BarCut[];
  /** What is left of the bar. */
  readonly drop: Inches;
  /** Whether the drop goes back on the rack. */
  readonly kept: boolean;
}

/** How the bars of one section are cut. */
export interface SectionCuts {
  readonly section: string;
  readonly bars: readonly BarPlan[];
  /** A drop is kept from this length on. */
  readonly keepDrop: Inches;
  /** No plan can use fewer bars. */
  readonly atLeast: number;
  /** Of all bars, and what no plan can be under; null where some bar has no price. */
  readonly cost: { readonly total: number; readonly atLeast: number } | null;
}

/** In the order in which the walk first meets a section. */
export type CutList = readonly SectionCuts[];
