/** Every tolerance of the project, with its reason. Inches unless said. */

/** Lengths that agree to this are one length: far under a tape's 1/16, far over rounding in doubles at 1e5 in. */
export const SAME_LENGTH = 1e-6;
/** Angles (radians) that agree to this are one angle: SAME_LENGTH at the greatest radius that a brief allows (1240 in). */
export const SAME_ANGLE = 1e-9;
/** The step in which pieces are told apart for marks and in which cutting is counted. */
export const CUT_STEP = 1e-4;
/** Floating noise in a piece's figures (inches, pounds): cleared to this, so that a mirrored project prints the same figures. */
export const NOISE = 1e-9;
/** What a tape reads to. */
export const TAPE = 1 / 16;
/** Clear paper kept round every text (drawings contract). */
export const TEXT_CLEAR = 0.02;
/** The widest gap between two edges of a plate that a cutting table may meet (drawings contract), and the least edge that it may be given. */
export const CUT_GAP = 1e-6;
/** How deep two nested parts may reach into one another: what is left of doubles where edges are laid against each other. Far under any kerf. */
export const NEST_TOUCH = 1e-7;
