/** A zone's clock as POSIX writes it in TZ: `MST7MDT,M3.2.0,M11.1.0`. Minutes; days as in dayNumber. */
import { daysInMonth, dayNumber, weekday } from './day-number.ts';

/** The last (week 5) or a numbered Sunday, Monday, … of a month, at a time of day that may be under 0 or over 24 hours. */
interface Change {
  readonly month: number;
  readonly week: number;
  readonly weekday: number;
  readonly minute: number;
}

export interface ZoneRule {
  /** East of UTC, while the first of its two clocks holds. */
  readonly offset: number;
  /** The other clock, from one change to the other; null where the clock never changes. */
  readonly other: { readonly offset: number; readonly from: Change; readonly to: Change } | null;
}

const NAME = String.raw`(?:[A-Za-z]+|<[^>]+>)`;
const TIME = String.raw`[+-]?\d+(?::\d+)?`;
const RULE = new RegExp(`^${NAME}(${TIME})(?:${NAME}(${TIME})?,(M[^,]+),(M[^,]+))?$`);

/** Reads a rule; throws with it where it is none: the table is ours. */
export function readZoneRule(text: string): ZoneRule {
  const found = RULE.exec(text);
  if (found === null) throw new Error(`no rule of a clock: ${text}`);
  // POSIX counts west of Greenwich.
  const offset = 0 - minutes(found[1]!);
  const [, , second, from, to] = found;
  if (from === undefined || to === undefined) return { offset, other: null };
  return { offset, other: { offset: second === undefined ? offset + 60 : 0 - minutes(second), from: readChange(from), to: readChange(to) } };
}

function minutes(text: string): number {
  const [hours = '0', rest = '0'] = text.replace(/^[+-]/, '').split(':');
  return (text.startsWith('-') ? -1 : 1) * (Number(hours) * 60 + Number(rest));
}

function readChange(text: string): Change {
  const found = new RegExp(String.raw`^M(\d+)\.(\d)\.(\d)(?:/(${TIME}))?$`).exec(text);
  if (found === null) throw new Error(`no change of a clock: ${text}`);
  return { month: Number(found[1]), week: Number(found[2]), weekday: Number(found[3]), minute: minutes(found[4] ?? '2') };
}

/** Minutes from 1970-01-01 on the wall clock that holds until the change. */
export function changeAt(year: number, { month, week, weekday: wanted, minute }: Change): number {
  const first = dayNumber(year, month, 1);
  const day = first + ((wanted - weekday(first) + 7) % 7) + (week - 1) * 7;
  const last = first + daysInMonth(year, month) - 1;
  return (day > last ? day - 7 : day) * 1440 + minute;
}
