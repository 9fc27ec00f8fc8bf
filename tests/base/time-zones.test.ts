import { describe, expect, it } from 'vitest';
import { clockOffset, isTimeZone, timeZoneNames } from '../../core/base/time/clock-offset.ts';
import { dayNumber, daysInMonth, weekday } from '../../core/base/time/day-number.ts';

describe('days by number', () => {
  it('are those of the machine\'s own calendar, leap years and centuries with them', () => {
    for (const [year, month, day] of [[1970, 1, 1], [1969, 12, 31], [2000, 2, 29], [2000, 3, 1], [1900, 2, 28], [1900, 3, 1], [2026, 10, 17], [2100, 12, 31], [1583, 1, 1]] as const) {
      const utc = Date.UTC(year, month - 1, day);
      expect(dayNumber(year, month, day), String([year, month, day])).toBe(utc / 86_400_000);
      expect(weekday(dayNumber(year, month, day))).toBe(new Date(utc).getUTCDay());
    }
    expect([1, 2, 4, 12].map((month) => daysInMonth(2028, month))).toEqual([31, 29, 30, 31]);
    expect(daysInMonth(2100, 2)).toBe(28);
  });
});

/** The machine's own tables: what a zone's wall clock is ahead of UTC at an instant. */
function machine(zone: string): (instant: number) => number {
  const format = new Intl.DateTimeFormat('en-US', { timeZone: zone, hourCycle: 'h23', year: 'numeric', month: 'numeric', day: 'numeric', hour: 'numeric', minute: 'numeric' });
  return (instant) => {
    const part = Object.fromEntries(format.formatToParts(instant).map(({ type, value }) => [type, Number(value)])) as Record<'year' | 'month' | 'day' | 'hour' | 'minute', number>;
    return (Date.UTC(part.year, part.month - 1, part.day, part.hour, part.minute) - instant) / 60_000;
  };
}

describe('a zone\'s clock', () => {
  it('is what the machine\'s own tables (ICU) say, for every zone on the 3rd and 27th of every month of 2026, at noon UTC', () => {
    const different = new Set<string>();
    for (const zone of timeZoneNames()) {
      const of = machine(zone);
      for (let month = 1; month <= 12; month++) {
        for (const day of [3, 27]) {
          const instant = Date.UTC(2026, month - 1, day, 12);
          const offset = of(instant);
          const wall = new Date(instant + offset * 60_000);
          if (clockOffset(zone, wall.getUTCFullYear(), wall.getUTCMonth() + 1, wall.getUTCDate(), wall.getUTCHours() * 60 + wall.getUTCMinutes()) !== offset) different.add(zone);
        }
      }
    }
    // In Ramadan Morocco sets its clock back, which no such rule can hold.
    expect([...different].sort()).toEqual(['Africa/Casablanca', 'Africa/El_Aaiun']);
    expect(timeZoneNames().length).toBeGreaterThan(500);
  });

  it.each([
    // 15 U.S.C. 260a: the second Sunday in March to the first Sunday in November, at 2 o'clock; in 2026 the 8th and the 1st.
    ['America/Denver', 2026, 3, 8, 119, -420], ['America/Denver', 2026, 3, 8, 180, -360], ['America/Denver', 2026, 11, 1, 59, -360], ['America/Denver', 2026, 11, 1, 120, -420],
    // In the south the clock is ahead over the turn of the year.
    ['Australia/Sydney', 2026, 1, 15, 720, 660], ['Australia/Sydney', 2026, 6, 15, 720, 600],
    ['Asia/Kathmandu', 2026, 6, 15, 0, 345], ['America/St_Johns', 2026, 7, 1, 0, -150], ['Etc/GMT+7', 2026, 7, 1, 0, -420], ['UTC', 2026, 7, 1, 0, 0],
  ] as const)('%s on %d-%d-%d at minute %d is %d from UTC', (zone, year, month, day, minute, offset) => {
    expect(clockOffset(zone, year, month, day, minute)).toBe(offset);
  });

  it('is known by its own name alone', () => {
    expect(isTimeZone('America/Denver')).toBe(true);
    expect(isTimeZone('America/Denvr')).toBe(false);
    expect(() => clockOffset('Nowhere', 2026, 1, 1, 0)).toThrow('Nowhere');
  });
});
