import { bendColumns, type Column, materialColumns, pieceColumns, stakeoutColumns, type Units } from '../schedules/index.ts';
import { say, type StringKey } from '../text/index.ts';
import { writeCsv } from '../writers/index.ts';
import { type Job } from './job.ts';
import { type Schedules } from './schedule-rows.ts';
import { utf8 } from './utf8.ts';

/** The schedules as CSV, lengths in the package's units. */
export const scheduleJobs = (schedules: Schedules, units: Units): readonly Job[] => [
  csv('pieces', 'package.pieces', pieceColumns(units), schedules.pieces),
  csv('bends', 'package.bends', bendColumns(units), schedules.bends),
  csv('materials', 'package.materials', materialColumns(), schedules.materials),
  csv('stakeout', 'package.stakeout', stakeoutColumns(units), schedules.stakeout),
];

const csv = <Row>(name: string, title: StringKey, columns: readonly Column<Row>[], rows: readonly Row[]): Job => ({
  path: `schedules/${name}.csv`,
  kind: 'schedules',
  title: say(title),
  make: () => utf8(writeCsv(columns, rows)),
});
