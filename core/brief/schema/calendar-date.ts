const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** Whether a text is a day of the calendar as YYYY-MM-DD (ISO 8601; Gregorian leap years), 1900 to 9999. */
export function isCalendarDate(text: string): boolean {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return false;
  const [year = 0, month = 0, day = 0] = match.slice(1).map(Number);
  const days = (DAYS[month - 1] ?? 0) + (month === 2 && isLeap(year) ? 1 : 0);
  return year >= 1900 && day >= 1 && day <= days;
}
