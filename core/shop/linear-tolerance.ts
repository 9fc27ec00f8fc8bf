import { inches, MM_PER_INCH, type Inches } from '../base/quantity.ts';
import { type Class13920, ISO_13920_LINEAR } from '../steel/tables/iso-13920.ts';

/** How far a length of a welded construction may be off, plus or minus (ISO 13920, linear dimensions). */
export function linearTolerance(length: Inches, grade: Class13920): Inches {
  const mm = length * MM_PER_INCH;
  const row = ISO_13920_LINEAR.find(([upTo]) => mm <= upTo);
  if (row === undefined) throw new Error(`no tolerance for a length of ${String(length)}`);
  return inches(row[1][grade] / MM_PER_INCH);
}
