import { inches, type Inches, type Radians } from '../base/quantity.ts';
import { type FenceSection } from './types.ts';

/** Clear space, inches, that each fence's first post keeps from the line halfway between the two faces. */
const CLEAR = 0.5;

/**
 * u0: how far from the pivot post's center, along its face, a fence begins, so that its post stands clear of the other fence's
 * (geometry contract, At P). `wedge` is ω, over 0.
 */
export function pivotGap(section: FenceSection, wedge: Radians): Inches {
  if (!(wedge > 0)) throw new Error(`no wedge between the faces at the pivot post: ${String(wedge)}`);
  return inches((section.k * Math.cos(wedge / 2) + section.D / 2 + CLEAR) / Math.sin(wedge / 2));
}
