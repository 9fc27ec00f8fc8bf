/** What a shop would choose and no source gives: common practice of the trade, a default to judge. */
export const NEST_PRACTICE = {
  /** Between two parts, in kerfs: one is cut along each, and as much metal stands between them, so that no edge is ever common. */
  spacingKerfs: 3,
  /** And never less than this, inches: a torch needs metal to stand on. */
  leastSpacing: 0.125,
} as const;

/** The clear distance between two parts on a sheet, from what the table's cut takes. A sheet's own edge may be a part's. */
export const partSpacing = (plateKerf: number): number => Math.max(NEST_PRACTICE.leastSpacing, NEST_PRACTICE.spacingKerfs * plateKerf);
