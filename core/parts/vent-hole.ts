import { inches, type Inches } from '../base/quantity.ts';
import { NOISE } from '../base/tolerance.ts';
import { type Section } from '../steel/index.ts';

/** Practice of galvanizers, from memory; theirs comes first. */
const VENT_PRACTICE = {
  /** Share of a hollow section's inside that one hole at each end lets through, by outside size in inches. */
  vent: [
    { under: 3, share: 0.45 },
    { under: Infinity, share: 0.3 },
  ],
  /** No hole is drilled smaller. */
  leastHole: 0.5,
} as const;

/** Holes at each end of a closed hollow piece, so that zinc runs out and steam can't burst it in the bath. */
export interface VentHole {
  readonly section: string;
  /** Inside diameter, or the lesser inside width. */
  readonly inside: Inches;
  /** Diameter of one hole at each end, or of each of two. */
  readonly one: Inches;
  readonly two: Inches;
}

const up = (value: number): Inches => inches(Math.ceil(value * 16 - NOISE) / 16);

/** By the area inside: one hole lets `share` of it through, two holes half each; never over the inside, to the next 1/16 in. */
export function ventHole(section: Section): VentHole {
  const { shape, across, along, wall } = section;
  const [a, b] = [across - 2 * wall, along - 2 * wall];
  const area = shape === 'round' ? (Math.PI * a ** 2) / 4 : a * b;
  const { share } = VENT_PRACTICE.vent.find(({ under }) => Math.max(across, along) < under)!;
  const hole = (holes: number): Inches => inches(Math.min(Math.min(a, b), Math.max(VENT_PRACTICE.leastHole, up(Math.sqrt((4 * area * share) / holes / Math.PI)))));
  return { section: section.name, inside: inches(Math.min(a, b)), one: hole(1), two: hole(2) };
}
