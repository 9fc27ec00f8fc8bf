/** What a report's pages are filled with. */
import { type Vec } from '../../base/points.ts';

/** A table of the report: its columns with their shares of the paper's width, and the words of its rows. */
export interface ReportTable {
  readonly title: string;
  readonly columns: readonly { readonly title: string; readonly share: number }[];
  readonly rows: readonly (readonly string[])[];
}

export interface ReportCard {
  readonly lines: readonly string[];
  /** In the plan; null where the finding has no place. */
  readonly at: Vec | null;
}
