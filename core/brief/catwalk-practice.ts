/**
 * Sizes of catwalks that no brief and no contract gives. All: common practice, no source, unless a line says more. Inches; a shop may
 * build otherwise. Everything that the layout, the pieces, the checks and the drawings of catwalks take for granted stands here.
 */
export const CATWALK_PRACTICE = {
  /** Raised-pattern floor plate; its weight is that of plain plate, its pattern adds a little (from memory). */
  deck: { plate: '3/16', thickness: 0.1875 },
  /** Two along every part under its edges, and across where parts meet off a post. */
  bearer: { section: 'tube 2 x 2 x 3/16', size: 2 },
  /**
   * A plate on edge at the back of every post: as deep there as this share of its reach, `tip` deep at the open edge, clear of the ground.
   * One shallower than the least share, or longer than `mostReach`, has a leg under its tip.
   */
  bracket: { plate: '3/8', thickness: 0.375, share: 0.6, leastShare: 0.35, tip: 3, ground: 2, mostReach: 30 },
  /** Under the tip of a bracket that is shallow or long, and under a deck's end that is not on a post. */
  leg: { section: 'pipe 1 1/2 sch 40', offPost: 6, foot: { plate: '1/4', thickness: 0.25, side: 6, anchor: 0.5, inset: 1 } },
  /**
   * Flat bars across a deck that slopes more than one in eight, no farther apart than `most`; over `steepest` degrees no deck may slope
   * (29 CFR 1926.451(e)(5), from memory: one in eight, 14 in, 20 degrees).
   */
  cleat: { flat: 'flat 3/8 x 1', thickness: 0.375, wide: 1, aside: 1, from: 1 / 8, most: 14, steepest: 20 },
  /** On the deck's outer edge, welded down on it: no gap under it. */
  toeBoard: { plate: '3/16', thickness: 0.1875, height: 4, gap: 0 },
  guard: {
    post: 'pipe 1 1/2 sch 40',
    top: 'pipe 1 1/2 sch 40',
    mid: 'pipe 1 1/4 sch 40',
    /** From the deck's edge to the axis of posts and rails. */
    inset: 1,
    /** Upper edge of the top rail over the deck; 1100 mm and a little where EN ISO 14122-3 holds. */
    height: 42,
    heightEu: 43.3125,
    /**
     * Drop from which the open edge has a guard. United States: 29 CFR 1910.28(b)(1). EN ISO 14122-3: over 500 mm; United Kingdom and
     * Ontario: any drop (all three from memory).
     */
    from: { us: 48, eu: 500 / 25.4, uk: 0, ontario: 0 },
  },
  /** A post that stands nearer to the end of a deck or of a landing than this has no joint of its own. */
  nearEnd: 4,
  steps: {
    /** Clear width: 22 in at least by WAC 296-24-74010(4). */
    width: 22,
    stringer: 'tube 2 x 6 x 3/16',
    stringerSize: { across: 2, along: 6 },
    tread: { plate: '1/4', thickness: 0.25 },
    /** Depth of a tread; the lesser one where the greater would make the flight too flat. */
    treads: [10, 9.5],
    mostRiser: 9.5,
    leastAngle: 30,
    /** Flights of so many risers have a rail on both sides (29 CFR 1910.28(b)(11), from memory; WAC 296-56-60215(3)). */
    railFrom: 4,
    rail: 'pipe 1 1/4 sch 40',
    railPost: 'pipe 1 1/4 sch 40',
    /** Upper edge of that rail, plumb over the nosings. */
    railHeight: 36,
  },
} as const;
