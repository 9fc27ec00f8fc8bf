import { say } from '../../text/index.ts';
import { judged, type Judge } from '../outcome.ts';
import { postDepths } from '../post-depths.ts';
import { meets } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { printed } from '../words/print.ts';

/** One outcome for each depth at which posts stand. */
export const postDepth: Judge = ({ brief, layout }) => postDepths(layout).map(({ depth, posts }) => {
  const [first] = posts;
  const only = posts.length === 1 && first?.kind === 'pivot-post';
  const figures = { depth: printed(brief, depth) };
  const where = only
    ? say('where.depthOne', { ...figures, post: say('where.pivotPost') })
    : say('where.depth', { ...figures, count: posts.length });
  return judged(meets(rules['post-depth'].limit, depth), depth, where, posts.length === 1 ? first?.at ?? null : null);
});
