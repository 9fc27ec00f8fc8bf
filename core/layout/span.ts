import { inches, type Inches } from '../base/quantity.ts';
import { divideBays } from './divide-bays.ts';
import { type FenceLine } from './fence-line.ts';
import { type Span, type SpanEnd } from './types.ts';

/** What one end of a span is, and where its post, its rails and its skin stop, along the face. */
export interface Stop {
  readonly end: SpanEnd;
  readonly post: Inches;
  readonly rail: Inches;
  readonly skin: Inches;
}

/** A stop where post, rails and skin all end at one place. */
export const evenStop = (end: SpanEnd, at: Inches): Stop => ({ end, post: at, rail: at, skin: at });

/** The span between two stops, its bays numbered from 1. */
export function makeSpan(line: FenceLine, start: Stop, end: Stop): Span {
  const posts = divideBays(line, start.post, end.post);
  const last = posts.length - 1;
  return {
    start: start.end,
    end: end.end,
    posts,
    firstBay: 1,
    railStops: posts.map((u, i) => (i === 0 ? start.rail : i === last ? end.rail : u)),
    skinFrom: inches(start.skin),
    skinTo: inches(end.skin),
  };
}
