/** What a shop would choose and no source gives: common practice of the trade, a default to judge. Inches. */
export const PLATE_PRACTICE = {
  /** Heights of a mark's capitals, the largest that fits first. */
  markHeights: [1, 0.75, 0.5, 0.375, 0.25],
  /** From a mark's letters to any edge. */
  markClear: 0.125,
} as const;
