import { inches } from '../base/quantity.ts';
import { type Brief, type Side } from '../brief/types.ts';
import { type FenceLine } from './fence-line.ts';
import { facePoint } from './fence-points.ts';
import { jambOffset } from './openings/cuts.ts';
import { type FencedChains } from './spans.ts';
import { type Fence, type Post, type PostKind, type SpanEnd } from './types.ts';

/** Whether the post at the end of a fence is the next fence's first one. */
const isShared = (end: SpanEnd): boolean => end.kind === 'joint' || end.kind === 'mitre' || end.kind === 'corner';

/**
 * Every post once, in walking order: a shared one under the fence downstream, as tall as the taller of the two fences; the pivot post
 * first among the crowd pen's.
 */
export function placePosts(brief: Brief, lines: readonly FenceLine[], chains: FencedChains, pivot: Post['at']): readonly Post[] {
  const posts: Post[] = [];
  for (const line of lines) {
    if (line.run === 'crowd-pen') posts.push(pivotPost(brief, pivot));
    const fence = chains.fences.get(line)!;
    const before = chains.follows.get(line);
    posts.push(...fencePosts(brief, fence, before === undefined ? null : chains.fences.get(before)!));
  }
  return posts;
}

function pivotPost(brief: Brief, at: Post['at']): Post {
  const { hand, pivotPost: section, pivotLength } = brief.crowdPen;
  const fenceHeight = brief.fences.crowdPen.height;
  return {
    kind: 'pivot-post',
    at,
    section,
    length: pivotLength ?? inches(fenceHeight + brief.footings.depth),
    fenceHeight,
    run: 'crowd-pen',
    side: hand,
    bay: 1,
    u: inches(0),
    hole: brief.footings,
    alsoEnds: null,
  };
}

function fencePosts(brief: Brief, fence: Fence, before: Fence | null): readonly Post[] {
  const posts: Post[] = [];
  for (const span of fence.spans) {
    const last = span.posts.length - 1;
    span.posts.forEach((u, i) => {
      if (i === last && isShared(span.end)) return;
      const shared = i === 0 && before !== null && isShared(span.start) ? before : null;
      const end = i === 0 ? span.start : i === last ? span.end : null;
      const section = (end?.kind === 'jamb' ? end.post : span.thick?.find((one) => one.u === u)?.post) ?? fence.brief.post;
      const fenceHeight = inches(Math.max(fence.brief.height, shared?.brief.height ?? 0));
      posts.push({
        kind: kindOf(end),
        at: facePoint(fence, u, section === fence.brief.post ? fence.section.k : jambOffset(fence, section)),
        section,
        length: inches(fenceHeight + brief.footings.depth),
        fenceHeight,
        run: fence.run,
        side: fence.side,
        bay: span.firstBay + i,
        u,
        hole: brief.footings,
        alsoEnds: shared === null ? null : endOf(shared),
      });
    });
  }
  return posts;
}

function kindOf(end: SpanEnd | null): PostKind {
  switch (end?.kind) {
    case 'mitre':
    case 'corner':
      return 'corner-post';
    case 'jamb':
      return 'jamb-post';
    case 'joint':
    case 'free':
    case 'pivot':
    case undefined:
      return 'post';
  }
}

/** A fence's last post, as the next fence's first one names it. */
function endOf(fence: Fence): { run: string; side: Side; bay: number; u: Post['u'] } {
  const span = fence.spans[fence.spans.length - 1]!;
  return { run: fence.run, side: fence.side, bay: span.firstBay + span.posts.length - 1, u: span.posts[span.posts.length - 1]! };
}
