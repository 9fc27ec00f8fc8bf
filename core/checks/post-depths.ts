import { type Layout, type Post } from '../layout/index.ts';

/** How deep a post stands: to the bottom of its hole, or less where it is too short to reach it from the top of its fence. */
const depthOf = (post: Post): number => Math.min(post.hole.depth, post.length - post.fenceHeight);

/** Posts that stand equally deep, inches. */
export interface PostDepth {
  readonly depth: number;
  readonly posts: readonly Post[];
}

/** The posts by how deep they stand; a pivot post whose length was set can stand at a depth of its own. */
export function postDepths({ posts }: Layout): readonly PostDepth[] {
  const depths = new Map<number, Post[]>();
  for (const post of posts) {
    // Heights and lengths are sums of the brief's figures: a step far under what is printed keeps one depth one.
    const depth = Math.round(depthOf(post) * 1e6) / 1e6;
    const alike = depths.get(depth);
    if (alike === undefined) depths.set(depth, [post]);
    else alike.push(post);
  }
  return [...depths.values()].map((alike) => ({ depth: depthOf(alike[0]!), posts: alike }));
}
