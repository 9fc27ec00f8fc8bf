import { type CutList } from '../shop/cut-list/index.ts';
import { type Job } from './job.ts';
import { type Design } from './pipeline.ts';
import { type Schedules } from './schedule-rows.ts';
import { scheduleTables } from './schedule-tables.ts';
import { utf8 } from './utf8.ts';

/** The schedules as CSV, lengths in the package's units. */
export const scheduleJobs = (design: Design, schedules: Schedules, cuts: CutList | null): readonly Job[] =>
  scheduleTables(design, schedules, cuts).map((table) => ({
    path: `schedules/${table.id}.csv`,
    kind: 'schedules',
    title: table.title,
    make: () => utf8(table.csv()),
  }));
