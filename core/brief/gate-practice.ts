/**
 * Sizes of gates that no brief and no contract gives: common practice of the trade, no source. Inches; a shop may build otherwise.
 * Everything that the layout, the pieces, the checks and the drawings of gates take for granted stands here and nowhere else.
 */
export const GATE_PRACTICE = {
  /** A man gate: a mitred pipe frame with bars across, hung on two weld-on barrel hinges on the jamb that the cattle pass first. */
  manGate: {
    frame: 'pipe 1 1/2 sch 40',
    bar: 'pipe 1 sch 40',
    /** Leaf above the ground. */
    ground: 3,
    /** Clear of the jamb at the free end. */
    strikeGap: 0.5,
    /** Opens this far to the cattle's side, degrees. */
    opens: 90,
    /** Clear height between two bars at most. */
    barGap: 12,
    /** Frames wider than this get uprights between. */
    uprightEach: 48,
    /** Flat stop on the free jamb, outside the leaf: thickness by width. */
    stop: { plate: '1/4', thickness: 0.25, width: 2 },
  },
  /**
   * A pen gate or alley gate: a mitred pipe frame with bars across and a strap from the upper hinge corner to the lower free one, hung
   * on two heavier barrel hinges; a stop on the side away from the swing; a slide bolt and its keeper there too, so that the leaf is
   * shut against one and held by the other.
   */
  latchedGate: {
    frame: 'pipe 1 1/2 sch 40',
    bar: 'pipe 1 sch 40',
    ground: 6,
    strikeGap: 1,
    opens: 90,
    barGap: 10,
    hinge: { barrel: 2, length: 5, pin: 1.25, fromEnd: 8 },
    stop: { plate: '1/4', thickness: 0.25, width: 2.5 },
    /** A flat strap in tension, on leaves wider than this. */
    strap: { from: 60, flat: 'flat 1/4 x 2' },
    /**
     * A round bolt in two sleeves on the leaf, a handle on it between them, and what it shoots into: a plate with a hole on a jamb
     * post, a sleeve on the face of the fence across a run. Its height, or so far under the leaf's top where that is lower.
     */
    bolt: { section: 'pipe 3/4 sch 40', sleeve: 'pipe 1 1/4 sch 40', sleeveLength: 3, apart: 8, handle: 'pipe 1/2 sch 40', handleLength: 5, height: 44, underTop: 8, reach: 2 },
    keeper: { plate: '3/8', thickness: 0.375, high: 4, deep: 3, hole: 1.25 },
    /** An alley gate's hinges stand on two flats that reach from the post to the face, between the rails. */
    bracket: { plate: '3/8', high: 3 },
    /** Post on the hinge side by the leaf's clear width, where the fence's own is no thicker; wider leaves take the last. */
    hingePosts: [
      { to: 60, post: 'pipe 2 1/2 sch 40' }, { to: 108, post: 'pipe 3 1/2 sch 40' }, { to: 156, post: 'pipe 4 sch 40' },
      { to: 192, post: 'pipe 5 sch 40' }, { to: 240, post: 'pipe 6 sch 40' },
    ],
  },
  /**
   * A plate in each corner of the frame of a leaf wider than this: two legs with square tips, the corner between them cut off clear of
   * the mitre's weld. Where a bar lies near, as short as it allows, and none where that is too short to be of use.
   */
  gusset: { from: 60, plate: '1/4', thickness: 0.25, leg: 4, least: 2, clip: 0.5, tip: 0.5, offBar: 0.5 },
  /** Beside a lapped fence the post stands back by the rails: a plate in the jamb's plane reaches from it to each hinge, between the rails. */
  hingeTab: { plate: '3/8', thickness: 0.375, offRail: 0.125 },
  /** A spring's eye: a plate lying flat, rounded at its free end, a hole there for the spring's hook. */
  springEye: { plate: '1/4', thickness: 0.25, long: 2, wide: 1.5, hook: 0.375 },
  /** A weld-on barrel hinge: outside diameter of the barrel, its length, its pin; the barrel fills the gap between jamb and frame. */
  hinge: { barrel: 1.25, length: 4, pin: 0.75, fromEnd: 8 },
  /** The crowd gate: solid, on two ring hinges round the pivot post. */
  crowdGate: {
    frame: 'pipe 2 sch 40',
    bar: 'pipe 1 1/2 sch 40',
    ground: 3,
    uprightEach: 48,
    barGap: 16,
    /** From the pivot post's surface to the frame: the ring and its strap. */
    hingeGap: 1.5,
    ring: { thickness: 0.5, width: 3, fromEnd: 8 },
    /** Clear of plates, fences and posts where the leaf comes to rest. */
    restClear: 0.5,
    /** Ratchet latch: a tooth to engage at most this far apart along the outer face, and this high. */
    tooth: { each: 12, plate: '3/8', thickness: 0.375, width: 2, length: 4 },
  },
  /** A backstop: a leaf that slides up between round guides under a beam across the chute, on the two posts at its station. */
  backstop: {
    beam: 'pipe 2 1/2 sch 40',
    frame: 'pipe 1 1/4 sch 40',
    bar: 'pipe 1 sch 40',
    guide: 'pipe 1/2 sch 40',
    /** Bottom of the leaf when it is down, and its height. */
    bottom: 15,
    leafHeight: 36,
    /** Clear under the leaf when it is held up. */
    clearUnder: 72,
    /** Between the leaf and each face; between the leaf and each guide. */
    sideGap: 0.5,
    guideGap: 0.25,
    /** Rope past the beam to where it is worked from, and what it takes to tie off. */
    ropeReach: 240,
  },
} as const;
