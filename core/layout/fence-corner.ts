import { allNear } from '../base/compare.ts';
import { signedAngle } from '../base/angle.ts';
import { inches, radians, type Inches } from '../base/quantity.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';
import { divideBays } from './divide-bays.ts';
import { type FenceLine } from './fence-line.ts';
import { headingAt } from './fence-points.ts';
import { fencesMeet, type Meeting } from './fences-meet.ts';
import { type SpanEnd } from './types.ts';

/** A corner of two fences that follow each other: what ends where, along the one's face (upstream) and the next one's (downstream). */
export interface FenceCorner {
  readonly post: Meeting;
  readonly rail: Meeting;
  readonly skin: Meeting;
  readonly end: SpanEnd;
}

/**
 * Works out the corner of two fences (geometry contract, At the mouth: the funnel and the first fence of the chute on that side). One
 * post stands where the two post lines meet. `from` is where the posts of the first begin. Null where the two lines never meet.
 */
export function fenceCorner(first: FenceLine, next: FenceLine, from: Inches): FenceCorner | null {
  const post = fencesMeet(first, first.section.k, next, next.section.k);
  if (post === null) return null;
  // Skins that would never meet (one wall an arc of another build) end with their faces.
  const skin = fencesMeet(first, first.section.t / 2, next, next.section.t / 2)
    ?? { upstream: first.length, downstream: inches(0) };
  const rail = fencesMeet(first, first.section.kr, next, next.section.kr);
  if (rail === null || !canMitre(first, next) || !mitreInBay(first, next, from, post, rail)) {
    return { post, rail: post, skin, end: { kind: 'corner' } };
  }
  const turn = signedAngle(headingAt(next, rail.downstream) - headingAt(first, rail.upstream));
  const toward = turn > 0 ? 'left' : 'right';
  return { post, rail, skin, end: { kind: 'mitre', mitre: radians(Math.abs(turn) / 2), toward } };
}

/** Lapped rails at the same heights are mitred to each other. */
function canMitre(first: FenceLine, next: FenceLine): boolean {
  return (
    first.brief.construction === 'lapped'
    && next.brief.construction === 'lapped'
    && allNear(first.section.rows, next.section.rows, SAME_LENGTH)
  );
}

/** Fences of very different build may meet beyond the next post: there is nothing to mitre then. */
function mitreInBay(first: FenceLine, next: FenceLine, from: Inches, post: Meeting, rail: Meeting): boolean {
  const firstPosts = divideBays(first, from, post.upstream);
  const nextPosts = divideBays(next, post.downstream, next.length);
  return rail.upstream > firstPosts[firstPosts.length - 2]! && rail.downstream < nextPosts[1]!;
}
