import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Fence } from '../../layout/index.ts';

/** A clear opening in a fence's elevation, between the ground and its top, inches. */
export interface FenceGap {
  /** `under` the lowest rail or skin, between two `rails`, or beside a `skin`. */
  readonly kind: 'under' | 'rails' | 'skin';
  readonly from: number;
  readonly size: number;
}

/** The openings of a fence from the ground up, posts left out: what neither a rail nor the skin closes. */
export function fenceGaps(fence: Fence): readonly FenceGap[] {
  const { rows, railHeight } = fence.section;
  const { sheet, solidFrom, solidTo } = fence.brief;
  const closed: { from: number; to: number; skin: boolean }[] =
    rows.map((row) => ({ from: row - railHeight / 2, to: row + railHeight / 2, skin: false }));
  if (sheet !== null && solidTo > solidFrom) closed.push({ from: solidFrom, to: solidTo, skin: true });
  closed.sort((a, b) => a.from - b.from);
  const gaps: FenceGap[] = [];
  let top = 0;
  let below: 'ground' | 'rail' | 'skin' = 'ground';
  for (const { from, to, skin } of closed) {
    if (from - top > SAME_LENGTH) {
      const kind = below === 'ground' ? 'under' : skin || below === 'skin' ? 'skin' : 'rails';
      gaps.push({ kind, from: top, size: from - top });
    }
    // A rail on the skin's edge ends the skin: what is above it is beside a skin still.
    if (to > top) below = skin || (below === 'skin' && from <= top) ? 'skin' : 'rail';
    top = Math.max(top, to);
  }
  return gaps;
}
