/** The trapezoids of a deck beside a fence (geometry contract, Catwalk). Lengths in inches, angles in radians. */
import { type PlanPoint } from '../../base/points.ts';
import { inches, type Inches } from '../../base/quantity.ts';
import { facePoint, radiusAtOffset } from '../fence-points.ts';
import { type Fence } from '../types.ts';

/** What of a fence its decks hang on. */
export type DeckFence = Pick<Fence, 'face' | 'faceRadius' | 'radiusSign' | 'outward' | 'section'>;

/** The most that the arc of the post backs may rise over a part's edge (geometry contract). */
export const MOST_RISE = 1;

/** From the face to the backs of the posts. */
export const backOffset = ({ section: { k, D } }: DeckFence): number => k + D / 2;

/** Radius of the circle through the post backs; null beside a straight fence. */
export const backRadius = (fence: DeckFence): Inches | null => radiusAtOffset(fence, backOffset(fence));

/** How far a part that turns through `angle` leaves its middle or its corners off that circle. */
export function deckRise(fence: DeckFence, angle: number): number {
  const radius = backRadius(fence);
  if (radius === null) return 0;
  const cos = Math.cos(angle / 2);
  return fence.radiusSign > 0 ? radius * (1 / cos - 1) : radius * (1 - cos);
}

/** The greatest angle of a part; Infinity beside a straight fence. */
export function mostAngle(fence: DeckFence): number {
  const radius = backRadius(fence);
  if (radius === null) return Infinity;
  return 2 * Math.acos(fence.radiusSign > 0 ? radius / (radius + MOST_RISE) : Math.max(0, 1 - MOST_RISE / radius));
}

/** From the arc's center to the edge that lies `aside` inches from the fence's, measured to the middle of that edge. */
function edgeDistance(fence: DeckFence, angle: number, aside: number): number {
  const radius = backRadius(fence)!;
  // On an outer wall the middle of the edge touches the circle, on an inner wall its corners do.
  return fence.radiusSign > 0 ? radius + aside : radius * Math.cos(angle / 2) - aside;
}

/** Length of the line across a part, `aside` inches from its edge at the fence, from one end to the other. `span`: its length along the face. */
export function chordAside(fence: DeckFence, angle: number, span: number, aside: number): Inches {
  return inches(fence.faceRadius === null ? span : 2 * edgeDistance(fence, angle, aside) * Math.tan(angle / 2));
}

/** The point `aside` inches from a part's edge at the fence, on the line square to the fence at `u`; `middle` is the part's own. */
export function deckPoint(fence: DeckFence, middle: number, angle: number, u: number, aside: number): PlanPoint {
  return facePoint(fence, u, backOffset(fence) + reachAside(fence, middle, angle, u, aside));
}

/** From the post backs, square to the fence at `u`, to the line `aside` inches from the part's edge at the fence. */
export function reachAside(fence: DeckFence, middle: number, angle: number, u: number, aside: number): number {
  if (fence.faceRadius === null) return aside;
  const away = edgeDistance(fence, angle, aside) / Math.cos((u - middle) / fence.faceRadius);
  return fence.radiusSign * (away - backRadius(fence)!);
}
