import { inches, type Inches } from '../../base/quantity.ts';
import { type Section } from '../../steel/types.ts';
import { type FenceLine } from '../fence-line.ts';
import { radiusAtOffset } from '../fence-points.ts';
import { evenStop, type Stop } from '../stop.ts';
import { type SpanEnd } from '../types.ts';

/** What an opening does to a fence: parts it between two jambs, or only sets a post. */
export type Cut =
  | { readonly kind: 'gap'; readonly end: Stop; readonly start: Stop }
  /** `post`: where it is thicker than the fence's own. */
  | { readonly kind: 'post'; readonly at: Inches; readonly post?: Section };

/** Least clear space between two posts, inches (geometry contract, Frame). */
const CLEAR = 0.5;

/** The first and the last post that a cut sets. */
export const cutPosts = (cut: Cut): readonly [Inches, Inches] => (cut.kind === 'post' ? [cut.at, cut.at] : [cut.end.post, cut.start.post]);

/** How far apart along the face the centers of two posts must stand. On an arc by the angle that the post line's chord takes. */
export function leastApart(line: FenceLine): number {
  return alongFace(line, line.brief.post.along + CLEAR);
}

/** By how much more a cut's thickest post must stand off another along the face. */
export function spare(line: FenceLine, cut: Cut): number {
  const posts = cut.kind === 'post' ? [cut.post] : [cut.end.end, cut.start.end].map((end) => (end.kind === 'jamb' ? end.post : undefined));
  const over = posts.map((post) => (post === undefined ? 0 : Math.max(post.across, post.along) - line.brief.post.along));
  return alongFace(line, Math.max(0, ...over) / 2);
}

/** A jamb post that is not the fence's own: on the side of the jamb that is passed first or last. */
export interface HingePost {
  readonly at: 'first' | 'last';
  readonly section: Section;
}

/**
 * A gap between jambs `width` apart on the face. Posts and skin stop at the jambs, each post's side touching the jamb's plane (on an
 * arc a radial one); lapped rails stop there too, coped ones on the post.
 */
export function gapCut(line: FenceLine, u: number, width: number, hinge: HingePost | null): Cut {
  const stop = (at: HingePost['at']): Stop => {
    const sign = at === 'first' ? -1 : 1;
    const own = hinge?.at === at && hinge.section !== line.brief.post ? hinge.section : null;
    const jamb = inches(u + (sign * width) / 2);
    const post = inches(jamb + sign * postBeside(line, own ?? line.brief.post));
    const end: SpanEnd = own === null ? { kind: 'jamb' } : { kind: 'jamb', post: own };
    return { ...evenStop(end, jamb), post, rail: line.brief.construction === 'lapped' ? jamb : post };
  };
  return { kind: 'gap', end: stop('first'), start: stop('last') };
}

/** From the face to the center of a post at a jamb: on a lapped fence a thicker one stands with its cattle side in line with the others. */
export const jambOffset = ({ section, brief }: Pick<FenceLine, 'section' | 'brief'>, post: Section): Inches =>
  (brief.construction === 'lapped' ? inches(section.t + section.d + post.across / 2) : section.k);

/** From a jamb's plane to the center of the post that touches it, along the face. */
function postBeside(line: FenceLine, post: Section): number {
  const half = post.along / 2;
  const radius = radiusAtOffset(line, jambOffset(line, post));
  return radius === null || line.faceRadius === null ? half : line.faceRadius * Math.asin(half / radius);
}

/** A chord on the post line as a length along the face. */
function alongFace(line: FenceLine, chord: number): number {
  const radius = radiusAtOffset(line, line.section.k);
  return radius === null || line.faceRadius === null ? chord : 2 * line.faceRadius * Math.asin(Math.min(1, chord / (2 * radius)));
}
