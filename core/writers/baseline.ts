/** The two ends of a text's baseline on the paper, from where it is anchored, its rotation and its measured width. */
import { type Vec, add, scale, unitAt } from '../base/points.ts';
import { type Stroke } from '../drafting/primitives.ts';

export type TextStroke = Extract<Stroke, { readonly kind: 'text' }>;

const BEHIND = { start: 0, middle: -0.5, end: -1 } as const;

/** Start and end of the baseline, paper inches. */
export function baseline(text: TextStroke): { readonly from: Vec; readonly to: Vec } {
  const along = scale(unitAt(text.rotation), text.width);
  const from = add(text.at, scale(along, BEHIND[text.anchor]));
  return { from, to: add(from, along) };
}
