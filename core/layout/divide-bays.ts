import { inches, type Inches } from '../base/quantity.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';
import { type FenceLine } from './fence-line.ts';
import { lengthAtOffset } from './fence-points.ts';

/**
 * Posts from `from` to `to` along a face, both included: as few equal bays as the greatest post spacing allows, measured on the post
 * line. On an arc equal bays are equal angles.
 */
export function divideBays(line: FenceLine, from: number, to: number): readonly Inches[] {
  const postLine = lengthAtOffset(line, from, to, line.section.k);
  const bays = Math.max(1, Math.ceil((postLine - SAME_LENGTH) / line.brief.postSpacing));
  return Array.from({ length: bays + 1 }, (_, i) => inches(i === bays ? to : from + ((to - from) * i) / bays));
}
