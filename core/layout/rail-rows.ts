import { type Inches } from '../base/quantity.ts';
import { type FenceBrief } from '../brief/types.ts';

/** Whether the sheet of a fence stops short of its top. */
export function isPartSolid(fence: FenceBrief): boolean {
  return fence.sheet !== null && fence.solidTo > 0 && fence.solidTo < fence.height;
}

/**
 * Heights of the rail centers from the ground, lowest first: the top rail's upper edge at the fence's height, equal pitch down to
 * `bottomRail`; on a part-solid fence the row nearest to `solidTo`, never the top one, moves to it so that the sheet ends on a rail
 * (of two equally near, the lower).
 */
export function railRows(fence: FenceBrief): readonly Inches[] {
  const top = fence.height - fence.rail.along / 2;
  const pitch = (top - fence.bottomRail) / (fence.rails - 1);
  const rows = Array.from({ length: fence.rails }, (_, i) => (i === fence.rails - 1 ? top : fence.bottomRail + pitch * i));
  if (isPartSolid(fence)) {
    let nearest = 0;
    for (let i = 1; i < rows.length - 1; i++) {
      if (Math.abs(rows[i]! - fence.solidTo) < Math.abs(rows[nearest]! - fence.solidTo)) nearest = i;
    }
    rows[nearest] = fence.solidTo;
  }
  return rows as Inches[];
}
