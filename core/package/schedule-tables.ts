import { bendColumns, type Column, openingColumns, pieceColumns, stakeoutColumns, type Units, weldColumns } from '../schedules/index.ts';
import { billColumns, billRows, type BillRow } from '../shop/bill/index.ts';
import { type CutList, cutListColumns, cutListRows } from '../shop/cut-list/index.ts';
import { plateColumns } from '../shop/plates/index.ts';
import { say, type StringKey } from '../text/index.ts';
import { csvCells, writeCsv } from '../writers/index.ts';
import { type Design } from './pipeline.ts';
import { type Schedules } from './schedule-rows.ts';

/** A schedule, for a file and for a screen alike. */
export interface ScheduleTable {
  /** `pieces`: its file's name without the ending. */
  readonly id: string;
  readonly title: string;
  readonly columns: readonly { readonly name: string; readonly kind: Column<never>['kind'] }[];
  /** As the file holds them. */
  cells(): readonly (readonly string[])[];
  csv(): string;
}

/** Every schedule of a package, in its order, lengths in the brief's units; the cut list, and the bars of the bill, once they are planned. */
export const scheduleTables = ({ brief, parts }: Pick<Design, 'brief' | 'parts'>, schedules: Schedules, cuts: CutList | null): readonly ScheduleTable[] => scheduleList(schedules, cuts, brief.units, billRows(brief, parts, schedules.materials, cuts, schedules.nests));

const scheduleList = (schedules: Schedules, cuts: CutList | null, units: Units, bill: readonly BillRow[]): readonly ScheduleTable[] => [
  table('pieces', 'package.pieces', pieceColumns(units), schedules.pieces),
  table('bends', 'package.bends', bendColumns(units), schedules.bends),
  ...(cuts === null ? [] : [table('cut-list', 'package.cut-list', cutListColumns(units), cutListRows(cuts))]),
  table('materials', 'package.materials', billColumns(units), bill),
  table('openings', 'package.openings', openingColumns(units), schedules.openings),
  table('plates', 'package.plates', plateColumns(units), schedules.plates),
  table('welds', 'package.welds', weldColumns(units), schedules.welds),
  table('stakeout', 'package.stakeout', stakeoutColumns(units), schedules.stakeout),
];

const table = <Row>(id: string, title: StringKey, columns: readonly Column<Row>[], rows: readonly Row[]): ScheduleTable => ({
  id,
  title: say(title),
  columns: columns.map(({ name, kind }) => ({ name, kind })),
  cells: () => csvCells(columns, rows),
  csv: () => writeCsv(columns, rows),
});
