import { type Inches } from '../base/quantity.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';

export type StockSheets = readonly (readonly [Inches, Inches])[];

/** Whether a flat piece fits a stock sheet, one way or the other. */
export function fitsSheet(sheets: StockSheets, length: number, height: number): boolean {
  return sheets.some(([a, b]) => within(length, a, height, b) || within(length, b, height, a));
}

const within = (length: number, a: number, height: number, b: number): boolean => length <= a + SAME_LENGTH && height <= b + SAME_LENGTH;

/**
 * Heights at which a solid side parts, its bottom and top included, given how tall a course may be: `skinCourses` by the stock sheets.
 */
export function coursesThatFit(fits: (height: number) => boolean, bottom: number, top: number, rows: readonly Inches[]): readonly number[] | null {
  const stops = [...rows.filter((row) => row > bottom + SAME_LENGTH && row < top - SAME_LENGTH), top];
  const courses = [bottom];
  let at = bottom;
  while (at < top) {
    const next = stops.findLast((stop) => stop > at && fits(stop - at));
    if (next === undefined) return null;
    courses.push(next);
    at = next;
  }
  return courses;
}

/**
 * Heights at which a solid side parts, its bottom and top included: one course where a sheet as long as the longest bay is tall enough;
 * else the fewest courses, from the bottom, each parting on a rail's center. Null where no stock sheet holds them.
 */
export function skinCourses(sheets: StockSheets, bay: number, bottom: number, top: number, rows: readonly Inches[]): readonly number[] | null {
  return coursesThatFit((height) => fitsSheet(sheets, bay, height), bottom, top, rows);
}
