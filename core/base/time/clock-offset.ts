import { dayNumber } from './day-number.ts';
import { changeAt, readZoneRule, type ZoneRule } from './zone-rule.ts';
import { ZONES } from './zones.ts';

const ruleOf: ReadonlyMap<string, string> = new Map(Object.entries(ZONES).flatMap(([rule, names]) => names.split(' ').map((name) => [name, rule] as const)));

const read = new Map<string, ZoneRule>();

/** A zone's rule, read once; null for a name that is no zone's. */
function zoneRule(zone: string): ZoneRule | null {
  const known = read.get(zone);
  if (known !== undefined) return known;
  const text = ruleOf.get(zone);
  if (text === undefined) return null;
  const rule = readZoneRule(text);
  read.set(zone, rule);
  return rule;
}

/** Every zone that there is, by name. */
export const timeZoneNames = (): readonly string[] => [...ruleOf.keys()];

/** Whether a name is one of the IANA time zone database's. */
export const isTimeZone = (name: string): boolean => ruleOf.has(name);

/**
 * How many minutes a zone's wall clock is ahead of UTC at a day and minute on that clock, in a year. In an hour that a change skips or
 * repeats it is the one or the other. Throws for a name that is no zone's.
 */
export function clockOffset(zone: string, year: number, month: number, day: number, minute: number): number {
  const rule = zoneRule(zone);
  if (rule === null) throw new Error(`no time zone: ${zone}`);
  const { offset, other } = rule;
  if (other === null) return offset;
  const wall = dayNumber(year, month, day) * 1440 + minute;
  const [from, to] = [changeAt(year, other.from), changeAt(year, other.to)];
  const holds = from < to ? wall >= from && wall < to : wall >= from || wall < to;
  return holds ? other.offset : offset;
}
