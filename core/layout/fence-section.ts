import { inches } from '../base/quantity.ts';
import { railRows, type FenceBrief } from '../brief/index.ts';
import { type FenceSection } from './types.ts';

/** How a fence is built up outward from its face (geometry contract, Fence): sheet, rail, post, and the heights of its rows. */
export function fenceSection(fence: FenceBrief): FenceSection {
  const t = fence.sheet?.thickness ?? 0;
  const d = fence.rail.across;
  const D = fence.post.across;
  const lapped = fence.construction === 'lapped';
  return {
    t: inches(t),
    d,
    railHeight: fence.rail.along,
    D,
    kr: inches(lapped ? t + d / 2 : t + D / 2),
    k: inches(lapped ? t + d + D / 2 : t + D / 2),
    rows: railRows(fence),
  };
}
