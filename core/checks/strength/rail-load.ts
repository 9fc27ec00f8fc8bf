import { type Section } from '../../steel/index.ts';
import { inertia, modulus, STIFFNESS, YIELD } from './section-strength.ts';

/** The push that a top rail bears, lb (29 CFR 1910.29(b)(3)). */
export const RAIL_PUSH = 200;

export interface RailLoad {
  /** Bending stress over yield. */
  readonly stress: number;
  /** How far the middle gives, inches. */
  readonly sag: number;
}

/**
 * A rail between two posts, taken as resting freely on both, under 200 lb at its middle: M = PL/4, deflection PL³/48EI. `span` in
 * inches. A rail that runs on past its posts is stiffer.
 */
export function railLoad(section: Section, span: number): RailLoad {
  return {
    stress: (RAIL_PUSH * span) / 4 / modulus(section, 'along') / YIELD,
    sag: (RAIL_PUSH * span ** 3) / (48 * STIFFNESS * inertia(section, 'along')),
  };
}
