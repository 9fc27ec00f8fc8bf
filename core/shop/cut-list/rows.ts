import { type Inches } from '../../base/quantity.ts';
import { length, text, type Column, type Units } from '../../schedules/column.ts';
import { cutColumns, type CutRow } from '../cutting/index.ts';
import { type CutList } from './types.ts';

/** One cut of one bar of a project's cut list. */
export interface CutListRow extends CutRow {
  /** Cut off the bar's rough end, on its first row. */
  readonly trim: Inches | null;
  /** What becomes of the drop, on the bar's last row. */
  readonly fate: 'keep' | 'scrap' | null;
  readonly from: 'rack' | 'stock';
}

/** The rows of `cut-list.csv`: bars count from 1 in a section, cuts from 1 on a bar. */
export const cutListRows = (list: CutList): readonly CutListRow[] =>
  list.flatMap(({ section, bars }) => bars.flatMap(({ stock, trim, cuts, drop, kept }, index) =>
    cuts.map((cut, at): CutListRow => {
      const last = at === cuts.length - 1;
      return {
        section, stock: stock.length, bar: index + 1, cut: at + 1, mark: cut.mark, length: cut.length, kerf: cut.kerf,
        drop: last ? drop : null,
        trim: at === 0 ? trim : null,
        fate: last && drop > 0 ? (kept ? 'keep' : 'scrap') : null,
        from: stock.count === null ? 'stock' : 'rack',
      };
    })));

/** Columns of `cut-list.csv`; trim, what becomes of the drop and where the bar is from are ours, to the right of the contract's. */
export function cutListColumns(units: Units): readonly Column<CutListRow>[] {
  const size = length(units);
  return [
    ...cutColumns(units),
    size('trim', (row) => row.trim),
    text('drop_is', (row) => row.fate),
    text('from', (row) => row.from),
  ];
}
