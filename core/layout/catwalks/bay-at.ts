import { type Fence } from '../types.ts';

/** The bay of a fence in which a place along its face lies; an opening is a bay of its own. */
export function bayAt({ spans }: Pick<Fence, 'spans'>, u: number): number {
  let bay = 1;
  for (const { posts, firstBay } of spans) {
    if (u < posts[0]!) return Math.max(1, firstBay - 1);
    for (let i = 0; i < posts.length - 1; i++) if (u >= posts[i]!) bay = firstBay + i;
    if (u >= posts[posts.length - 1]!) bay = firstBay + posts.length - 2;
  }
  return bay;
}
