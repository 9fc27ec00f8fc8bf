import { inches, type Inches } from '../../base/quantity.ts';
import { SORT_PRACTICE } from '../../brief/sort-practice.ts';
import { type Brief } from '../../brief/types.ts';

/**
 * Clear width of the sort alley: that of the widest sort gate, so that its open leaf reaches across and turns cattle into the pen. Where
 * that is nearly the width of what comes before, the alley goes on at that width, or as much wider as a shoulder's two posts ask for.
 */
export function sortWidth(brief: Brief): Inches {
  const { chute, squeezePad, sortPens, fences: { pad, pens } } = brief;
  const before = squeezePad?.width ?? chute.width;
  const gate = Math.max(chute.width, ...sortPens.map((pen) => pen.gate));
  const posts = [pad.left, pad.right, pens.left, pens.right].map(({ post }) => Math.max(post.along, post.across));
  const least = 2 * (Math.max(...posts) + SORT_PRACTICE.postsApart);
  if (Math.abs(gate - before) >= least) return inches(gate);
  return inches(gate <= before ? before : before + least);
}
