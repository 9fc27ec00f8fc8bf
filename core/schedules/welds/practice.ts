/**
 * The rule by which welds are sized, in one place. Inches. What a project's shop says of its own (`shop.welds`) goes before it.
 * A weld that carries a calculated load is a licensed designer's to size.
 */
export const WELD_PRACTICE = {
  /** Least fillet by the thickness of the thinner part, at most: AISC 360 Table J2.4 (from memory). */
  leastFillet: [
    { thinner: 0.25, size: 0.125 },
    { thinner: 0.5, size: 0.1875 },
    { thinner: 0.75, size: 0.25 },
    { thinner: Infinity, size: 0.3125 },
  ],
  /** Sizes are laid to this step. */
  step: 0.0625,
  /** A butt joint without a gap still takes a bead half as wide as the wall is thick: common practice, no source. */
  leastGap: 0.5,
} as const;
