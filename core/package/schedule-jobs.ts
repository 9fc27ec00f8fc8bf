import { type Units } from '../schedules/index.ts';
import { type CutList } from '../shop/cut-list/index.ts';
import { type Job } from './job.ts';
import { type Schedules } from './schedule-rows.ts';
import { scheduleTables } from './schedule-tables.ts';
import { utf8 } from './utf8.ts';

/** The schedules as CSV, lengths in the package's units. */
export const scheduleJobs = (schedules: Schedules, cuts: CutList | null, units: Units): readonly Job[] =>
  scheduleTables(schedules, cuts, units).map((table) => ({
    path: `schedules/${table.id}.csv`,
    kind: 'schedules',
    title: table.title,
    make: () => utf8(table.csv()),
  }));
