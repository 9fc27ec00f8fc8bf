/**
 * Sizes of sort pens that no brief and no contract gives: common practice of the trade, no source. Inches; a designer may want others.
 */
export const SORT_PRACTICE = {
  /** Of the sort alley before its first pen. */
  lead: 24,
  /** A pen along the sort alley, at least. */
  length: 240,
  /** From the alley's face to the pen's back fence. */
  depth: 240,
  /** From a pen's start to its gate, and past the gate to its end at least: the jamb posts and a bay. */
  jambRoom: 24,
  /** Between an open leaf and the fence across the alley, at most: through more an animal goes past, or puts its head. */
  mostGap: 8,
  /** Clear between two posts that are not one (geometry contract). */
  postsApart: 0.5,
} as const;
