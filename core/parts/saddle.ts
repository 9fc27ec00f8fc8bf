/** Round branch on a round post (geometry contract, Coped rail and Saddle). */
import { inches, type Inches } from '../base/quantity.ts';

/**
 * How far from the post's axis the branch is cut, at φ round the branch from the plane of the two axes:
 * (sqrt(p² - r²·sin²φ) - r·cosφ·cosβ) / sinβ. `beta` is the angle between the axes; φ = 0 lies on the obtuse-angle side.
 * Throws for a branch as thick as the post or thicker: the brief's fault, caught before.
 */
export function saddleReach(branchRadius: number, postRadius: number, beta: number, phi: number): Inches {
  if (!(branchRadius < postRadius)) throw new Error(`branch of radius ${String(branchRadius)} on a post of ${String(postRadius)}`);
  const across = branchRadius * Math.sin(phi);
  const straight = Math.sqrt((postRadius - across) * (postRadius + across));
  return inches((straight - branchRadius * Math.cos(phi) * Math.cos(beta)) / Math.sin(beta));
}

/** How far the cut at φ lies back from the branch's long point: w(φ) - min w. */
export function cutBack(branchRadius: number, postRadius: number, beta: number, phi: number): Inches {
  return inches(saddleReach(branchRadius, postRadius, beta, phi) - leastReach(branchRadius, postRadius, beta));
}

/**
 * The least of w over φ. On a square branch it lies at the sides, cosφ = 0; on a leaning one where the slope of w is nothing:
 * r·sinφ·(cosβ - r·cosφ / sqrt(p² - r²·sin²φ)) = 0, so cosφ = cosβ·sqrt(p² - r²) / (r·sinβ), or at φ = 0 where that is over 1.
 */
function leastReach(r: number, p: number, beta: number): Inches {
  const cosine = (Math.cos(beta) * Math.sqrt((p - r) * (p + r))) / (r * Math.sin(beta));
  return saddleReach(r, p, beta, Math.acos(Math.min(1, Math.max(-1, cosine))));
}

/** How far a level rail's two points stand from the center of a plumb post: the long point at its sides, the short at top and bottom. */
export interface CopeReach {
  readonly long: Inches;
  readonly short: Inches;
}

/** The same for a rail that slopes to a plumb post, β = 90° - slope: the least and the greatest of w, which lies at φ = 180°. */
export function slopeCopeReach(railRadius: number, postRadius: number, slope: number): CopeReach {
  const beta = Math.PI / 2 - slope;
  return { long: leastReach(railRadius, postRadius, beta), short: saddleReach(railRadius, postRadius, beta, Math.PI) };
}

/** sqrt(p² - r²) and p. Throws for a rail as thick as its post or thicker. */
export function copeReach(railRadius: number, postRadius: number): CopeReach {
  const square = Math.PI / 2;
  return { long: saddleReach(railRadius, postRadius, square, square), short: inches(postRadius) };
}
