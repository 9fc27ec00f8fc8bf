import { type Layout, type Post } from '../layout/index.ts';
import { type Side } from '../brief/types.ts';

/** The post that stands at the start of a bay of a fence (its bays + 1 for the last one), whichever fence lists it. */
export type PostLookup = (run: string, side: Side, bay: number) => Post;

const keyOf = (run: string, side: Side, bay: number): string => `${run}/${side}/${String(bay)}`;

/** Looks posts up by the fences that they serve. Throws for one that does not stand: a programmer's mistake. */
export function postLookup(layout: Layout): PostLookup {
  const posts = new Map<string, Post>();
  for (const post of layout.posts) {
    if (post.kind === 'pivot-post') continue;
    posts.set(keyOf(post.run, post.side, post.bay), post);
    if (post.alsoEnds !== null) posts.set(keyOf(post.alsoEnds.run, post.alsoEnds.side, post.alsoEnds.bay), post);
  }
  return (run, side, bay) => {
    const key = keyOf(run, side, bay);
    const post = posts.get(key);
    if (post === undefined) throw new Error(`no post at ${key}`);
    return post;
  };
}
