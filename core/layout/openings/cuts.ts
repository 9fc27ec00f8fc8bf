import { inches, type Inches } from '../../base/quantity.ts';
import { type FenceLine } from '../fence-line.ts';
import { radiusAtOffset } from '../fence-points.ts';
import { evenStop, type Stop } from '../stop.ts';

/** What an opening does to a fence: parts it between two jambs, or only sets a post. */
export type Cut =
  | { readonly kind: 'gap'; readonly end: Stop; readonly start: Stop }
  | { readonly kind: 'post'; readonly at: Inches };

/** Least clear space between two posts, inches (geometry contract, Frame). */
const CLEAR = 0.5;

/** The first and the last post that a cut sets. */
export const cutPosts = (cut: Cut): readonly [Inches, Inches] => (cut.kind === 'post' ? [cut.at, cut.at] : [cut.end.post, cut.start.post]);

/** How far apart along the face the centers of two posts must stand. On an arc by the angle that the post line's chord takes. */
export function leastApart(line: FenceLine): number {
  return alongFace(line, line.brief.post.along + CLEAR);
}

/**
 * A gap between jambs `width` apart on the face. Posts and skin stop at the jambs, each post's side touching the jamb's plane (on an
 * arc a radial one); lapped rails stop there too, coped ones on the post.
 */
export function gapCut(line: FenceLine, u: number, width: number): Cut {
  const toPost = width / 2 + postBeside(line);
  const stop = (sign: 1 | -1): Stop => {
    const jamb = inches(u + (sign * width) / 2);
    const post = inches(u + sign * toPost);
    return { ...evenStop({ kind: 'jamb' }, jamb), post, rail: line.brief.construction === 'lapped' ? jamb : post };
  };
  return { kind: 'gap', end: stop(-1), start: stop(1) };
}

/** From a jamb's plane to the center of the post that touches it, along the face. */
function postBeside(line: FenceLine): number {
  const half = line.brief.post.along / 2;
  const radius = radiusAtOffset(line, line.section.k);
  return radius === null || line.faceRadius === null ? half : line.faceRadius * Math.asin(half / radius);
}

/** A chord on the post line as a length along the face. */
function alongFace(line: FenceLine, chord: number): number {
  const radius = radiusAtOffset(line, line.section.k);
  return radius === null || line.faceRadius === null ? chord : 2 * line.faceRadius * Math.asin(Math.min(1, chord / (2 * radius)));
}
