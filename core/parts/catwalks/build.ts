/** Heights of what a deck is built of, and which of it there is room for. Inches from the ground. */
import { inches, type Inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';

const { deck, bearer, bracket, leg } = CATWALK_PRACTICE;

export interface DeckBuild {
  readonly top: Inches;
  readonly plateUnder: Inches;
  readonly bearerUnder: Inches;
  /** A plate on the ground has no bearers; bearers near it lie on it, without brackets. */
  readonly bearers: boolean;
  readonly brackets: boolean;
}

/** Plumb under a place of the deck that is `height` over the ground; `slope`: the deck's there, radians, which makes all of it taller. */
export function deckBuild(height: number, slope = 0): DeckBuild {
  const plateUnder = height - deck.thickness / Math.cos(slope);
  const bearerUnder = plateUnder - bearer.size / Math.cos(slope);
  return {
    top: inches(height), plateUnder: inches(plateUnder), bearerUnder: inches(bearerUnder),
    bearers: bearerUnder >= -SAME_LENGTH,
    brackets: bearerUnder >= bracket.ground + bracket.tip - SAME_LENGTH,
  };
}

/** Depth of a bracket at its post, and whether a leg stands under its tip. */
export function bracketSize(reach: number, build: DeckBuild): { readonly depth: Inches; readonly leg: boolean } {
  const depth = Math.max(bracket.tip, Math.min(bracket.share * reach, build.bearerUnder - bracket.ground));
  return { depth: inches(depth), leg: reach > bracket.mostReach || depth < bracket.leastShare * reach - SAME_LENGTH };
}

/** How far under the middle of what slopes a level edge `wide` across it stays clear. */
export const underSlope = (wide: number, slope: number): number => (wide / 2) * Math.tan(Math.abs(slope));

/** A leg on its foot plate from the ground to what it carries. */
export const legLength = (under: number): Inches => inches(under - leg.foot.thickness);
