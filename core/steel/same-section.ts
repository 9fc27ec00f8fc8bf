import { near } from '../base/compare.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';
import { type Section } from './types.ts';

/** Whether two names mean one section: `tubing 2.375 x 0.19` and `tubing 2 3/8 x 0.190`. */
export function sameSection(a: Section, b: Section): boolean {
  return a.shape === b.shape && near(a.across, b.across, SAME_LENGTH) && near(a.along, b.along, SAME_LENGTH)
    && near(a.wall, b.wall, SAME_LENGTH);
}
