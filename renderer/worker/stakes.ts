import { type Brief } from '../../core/brief/index.ts';
import { type Sheet } from '../../core/drafting/primitives.ts';
import { type StakeRow } from '../../core/schedules/index.ts';
import { type Stakes } from './protocol.ts';

/** Drawings of the stakeout bear the numbers 201, 202, … */
const SERIES = /^2\d\d+$/;

/** What the place for setting out shows: the rows with their full figures, and which drawing calls out which point. */
export function stakesOf(brief: Brief, rows: readonly StakeRow[], set: readonly Sheet[]): Stakes {
  const names = new Set(rows.map((row) => row.point));
  return {
    units: brief.units,
    rows,
    note: brief.control.note,
    drawings: set.flatMap((sheet, index) => (SERIES.test(sheet.number)
      ? [{ index, number: sheet.number, title: sheet.title, points: calledOut(sheet).filter((name) => names.has(name)) }]
      : [])),
  };
}

const calledOut = (sheet: Sheet): string[] => sheet.primitives.flatMap((item) => (item.kind === 'callout' ? [item.text] : []));
