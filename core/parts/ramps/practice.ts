/** Figures of ramps that no standard or rule of the contract gives. All: common practice, no source. Inches unless said. */
import { inches } from '../../base/quantity.ts';

export const RAMP_PRACTICE = {
  /** Planks laid across a cleated ramp and its dock, full sawn. */
  plank: { thick: inches(2), wide: inches(12) },
  /** A last plank narrower than this is shared with the one before it. */
  leastPlank: inches(4),
  /** Timber across the truck's end of the dock, its upper edge level with the dock. */
  bumper: { thick: inches(4), tall: inches(12) },
  /** By which the side forms of steps are marked out: sheet, and about how long it may be. */
  formTemplate: { sheet: '14 ga', long: inches(42) },
  /** Pounds a cubic inch: heavy hardwood, wet, about 50 lb a cubic foot (from memory). */
  timberDensity: 50 / 1728,
  /** Pounds a cubic inch: plain concrete, 150 lb a cubic foot (from memory). */
  concreteDensity: 150 / 1728,
} as const;
