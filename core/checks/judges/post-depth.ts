import { type Post } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { judged, type Judge } from '../outcome.ts';
import { meets } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { printed } from '../words/print.ts';

/** How deep a post stands: to the bottom of its hole, or less where it is too short to reach it from the top of its fence. */
const depthOf = (post: Post): number => Math.min(post.hole.depth, post.length - post.fenceHeight);

/** One outcome for each depth; a pivot post whose length was set can stand at a depth of its own. */
export const postDepth: Judge = ({ brief, layout }) => {
  const depths = new Map<number, Post[]>();
  for (const post of layout.posts) {
    // Heights and lengths are sums of the brief's figures: a step far under what is printed keeps one depth one.
    const depth = Math.round(depthOf(post) * 1e6) / 1e6;
    const alike = depths.get(depth);
    if (alike === undefined) depths.set(depth, [post]);
    else alike.push(post);
  }
  return [...depths.values()].map((posts) => {
    const [first] = posts as [Post, ...Post[]];
    const depth = depthOf(first);
    const only = posts.length === 1 && first.kind === 'pivot-post';
    const figures = { depth: printed(brief, depth) };
    const where = only
      ? say('where.depthOne', { ...figures, post: say('where.pivotPost') })
      : say('where.depth', { ...figures, count: posts.length });
    return judged(meets(rules['post-depth'].limit, depth), depth, where, posts.length === 1 ? first.at : null);
  });
};
