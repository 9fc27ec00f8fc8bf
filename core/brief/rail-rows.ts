import { inches, type Inches } from '../base/quantity.ts';
import { type Section, type Sheet } from '../steel/index.ts';

/** What the rows of a fence follow from. */
export interface RowSettings {
  readonly height: Inches;
  readonly solidTo: Inches;
  readonly rails: number;
  readonly bottomRail: Inches;
  readonly rail: Section;
  readonly sheet: Sheet | null;
}

/** Whether a fence has sheet that stops short of its top. */
export const isPartSolid = ({ height, solidTo, sheet }: RowSettings): boolean => sheet !== null && solidTo > 0 && solidTo < height;

/**
 * Heights of the rail centers from the ground, the lowest first: the top rail's upper edge at the fence's height, the bottom one's
 * center at `bottomRail`, equal pitch between. On a part-solid fence the row nearest to `solidTo`, never the top one, then moves to it,
 * so that the sheet ends on a rail; of two equally near the lower one. Not sorted: a row that has passed the top one shows as such.
 */
export function railRows(fence: RowSettings): readonly Inches[] {
  const top = fence.height - fence.rail.along / 2;
  const pitch = (top - fence.bottomRail) / (fence.rails - 1);
  const rows = Array.from({ length: fence.rails }, (_, row) => inches(row === fence.rails - 1 ? top : fence.bottomRail + pitch * row));
  if (!isPartSolid(fence)) return rows;
  const below = rows.slice(0, -1).map((height) => Math.abs(height - fence.solidTo));
  return rows.with(below.indexOf(Math.min(...below)), fence.solidTo);
}
