/** What the design was checked against and how it came out. */
import { type PlanPoint } from '../base/points.ts';

export type Result = 'ok' | 'look' | 'fix';

export interface Finding {
  /** A row of the rules. */
  readonly id: string;
  readonly result: Result;
  /** null where the rule has no figure, or no subject in this project. */
  readonly measured: number | null;
  readonly limit: string;
  readonly unit: string;
  readonly trust: string;
  readonly source: string;
  /** In words: the run, side and station, or why there is nothing to measure. */
  readonly where: string;
  /** In the plan, where there is a place. Not written to findings.json. */
  readonly at: PlanPoint | null;
}
