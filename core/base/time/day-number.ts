/** Days of the Gregorian calendar counted from 1970-01-01, which is 0 and a Thursday. No clock is read. */

/** The count of a day; `month` 1 to 12. Count by eras of 400 years, each year taken to begin in March so that a leap day is its last. */
export function dayNumber(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const inEra = y - era * 400;
  const inYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  return era * 146_097 + inEra * 365 + Math.floor(inEra / 4) - Math.floor(inEra / 100) + inYear - 719_468;
}

/** 0 for Sunday. */
export const weekday = (day: number): number => (((day + 4) % 7) + 7) % 7;

/** How many days a month has. */
export const daysInMonth = (year: number, month: number): number =>
  dayNumber(month === 12 ? year + 1 : year, month === 12 ? 1 : month + 1, 1) - dayNumber(year, month, 1);
