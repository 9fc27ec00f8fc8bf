import { allNear } from '../base/compare.ts';
import { signedAngle } from '../base/angle.ts';
import { inches, radians, type Inches } from '../base/quantity.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';
import { divideBays } from './divide-bays.ts';
import { type FenceLine } from './fence-line.ts';
import { headingAt } from './fence-points.ts';
import { fencesMeet, type Meeting } from './fences-meet.ts';
import { type SpanEnd } from './types.ts';

/** The corner at the mouth, on the funnel's side: what ends where, along the funnel's face (upstream) and the chute's (downstream). */
export interface MouthCorner {
  readonly post: Meeting;
  readonly rail: Meeting;
  readonly skin: Meeting;
  readonly end: SpanEnd;
}

/**
 * Works out the corner of the funnel fence and the first fence of the chute on that side (geometry contract, At the mouth).
 * `funnelFrom` is where the funnel's posts begin. Null where the two post lines never meet.
 */
export function mouthCorner(funnel: FenceLine, chute: FenceLine, funnelFrom: Inches): MouthCorner | null {
  const post = fencesMeet(funnel, funnel.section.k, chute, chute.section.k);
  if (post === null) return null;
  // Skins that would never meet (one wall an arc of another build) end with their faces.
  const skin = fencesMeet(funnel, funnel.section.t / 2, chute, chute.section.t / 2)
    ?? { upstream: funnel.length, downstream: inches(0) };
  const rail = fencesMeet(funnel, funnel.section.kr, chute, chute.section.kr);
  if (rail === null || !canMitre(funnel, chute) || !mitreInBay(funnel, chute, funnelFrom, post, rail)) {
    return { post, rail: post, skin, end: { kind: 'corner' } };
  }
  const turn = signedAngle(headingAt(chute, rail.downstream) - headingAt(funnel, rail.upstream));
  const toward = turn > 0 ? 'left' : 'right';
  return { post, rail, skin, end: { kind: 'mitre', mitre: radians(Math.abs(turn) / 2), toward } };
}

/** Lapped rails at the same heights are mitred to each other. */
function canMitre(funnel: FenceLine, chute: FenceLine): boolean {
  return (
    funnel.brief.construction === 'lapped'
    && chute.brief.construction === 'lapped'
    && allNear(funnel.section.rows, chute.section.rows, SAME_LENGTH)
  );
}

/** Fences of very different build may meet beyond the next post: there is nothing to mitre then. */
function mitreInBay(funnel: FenceLine, chute: FenceLine, funnelFrom: Inches, post: Meeting, rail: Meeting): boolean {
  const funnelPosts = divideBays(funnel, funnelFrom, post.upstream);
  const chutePosts = divideBays(chute, post.downstream, chute.length);
  return rail.upstream > funnelPosts[funnelPosts.length - 2]! && rail.downstream < chutePosts[1]!;
}
