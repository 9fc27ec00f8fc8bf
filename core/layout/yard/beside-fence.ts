import { inches, type Inches } from '../../base/quantity.ts';
import { SORT_PRACTICE } from '../../brief/sort-practice.ts';
import { type FenceBrief } from '../../brief/types.ts';
import { fenceSection } from '../fence-section.ts';

/**
 * How far from a fence's face another of the same build, square to it, begins at its back: their two nearest posts keep clear of each
 * other. So far from the sort alley's face stand the ends of a pen, and so far past a pen's corner the back fence of the next one.
 */
export function besideFence(brief: FenceBrief): Inches {
  const { k, D } = fenceSection(brief);
  return inches(k + Math.max(D, brief.post.along) + SORT_PRACTICE.postsApart);
}
