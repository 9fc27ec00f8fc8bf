import { inches } from '../base/quantity.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';
import { divideBays } from './divide-bays.ts';
import { type FenceLine } from './fence-line.ts';
import { type Cut } from './openings/cuts.ts';
import { type Stop } from './stop.ts';
import { type Span } from './types.ts';

/** The spans between two stops of a fence and the gaps cut into it, in order. Bays count from 1; a gap is a bay too. */
export function makeSpans(line: FenceLine, start: Stop, end: Stop, cuts: readonly Cut[]): readonly Span[] {
  const spans: Span[] = [];
  let from = start;
  let firstBay = 1;
  let posts: Extract<Cut, { kind: 'post' }>[] = [];
  const close = (to: Stop): void => {
    const span = makeSpan(line, from, to, posts, firstBay);
    spans.push(span);
    // The gap that follows is a bay of its own, begun by this span's last post.
    firstBay += span.posts.length;
    posts = [];
  };
  for (const cut of cuts) {
    if (cut.kind === 'post') posts.push(cut);
    else {
      close(cut.end);
      from = cut.start;
    }
  }
  close(end);
  return spans;
}

/** One span; `set`: posts within it that have a place of their own, ascending. Equal bays stand between each two of them. */
function makeSpan(line: FenceLine, start: Stop, end: Stop, set: readonly Extract<Cut, { kind: 'post' }>[], firstBay: number): Span {
  const between = set.filter(({ at }) => at > start.post + SAME_LENGTH && at < end.post - SAME_LENGTH);
  const thick = between.flatMap(({ at, post }) => (post === undefined ? [] : [{ u: at, post }]));
  const fixed = [start.post, ...between.map(({ at }) => at), end.post];
  const posts = fixed.slice(1).flatMap((to, i) => divideBays(line, fixed[i]!, to).slice(i === 0 ? 0 : 1));
  const last = posts.length - 1;
  return {
    start: start.end,
    end: end.end,
    posts,
    firstBay,
    railStops: posts.map((u, i) => (i === 0 ? start.rail : i === last ? end.rail : u)),
    skinFrom: inches(start.skin),
    skinTo: inches(end.skin),
    ...(thick.length === 0 ? {} : { thick }),
  };
}
