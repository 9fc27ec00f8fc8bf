import { type Layout, type Post } from '../../layout/index.ts';

/** A hole in the ground by the name it bears on the stakeout: `H0` the pivot post, `H1` … in walking order. */
export interface StakePoint {
  readonly name: string;
  readonly post: Post;
}

/** Every post with its name, in walking order. */
export function stakePoints(layout: Layout): readonly StakePoint[] {
  let count = 0;
  return layout.posts.map((post) => ({ name: `H${String(post.kind === 'pivot-post' ? 0 : ++count)}`, post }));
}
