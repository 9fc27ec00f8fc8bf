import { inches, type Inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Brief } from '../../brief/types.ts';
import { runSides, type FenceLine } from '../fence-line.ts';
import { facePoint } from '../fence-points.ts';
import { jambOffset, type Cut } from '../openings/cuts.ts';
import { type Ends } from '../openings/fit.ts';
import { makeSpans } from '../span.ts';
import { evenStop } from '../stop.ts';
import { type Fence, type Post, type Ramp, type Span, type SpanEnd } from '../types.ts';
import { fromLowEnd } from './along.ts';
import { lineHeight } from './figures.ts';

/** A part of a ramp along the walk: its sloping stretch or its level dock. */
export interface RampPart {
  readonly kind: 'slope' | 'dock';
  readonly from: Inches;
  readonly to: Inches;
}

/** The parts in walking order; a dock of no length is none. */
export function rampParts({ brief, figures, length }: Ramp): readonly RampPart[] {
  const { run } = figures;
  const dock = brief.dockLength > SAME_LENGTH;
  if (brief.kind === 'load') {
    const slope: RampPart = { kind: 'slope', from: inches(0), to: run };
    return dock ? [slope, { kind: 'dock', from: run, to: length }] : [slope];
  }
  const edge = inches(length - run);
  const slope: RampPart = { kind: 'slope', from: edge, to: length };
  return dock ? [{ kind: 'dock', from: inches(0), to: edge }, slope] : [slope];
}

/** The fences of a ramp before their posts are set, left then right. */
export function rampLines(brief: Brief, ramp: Ramp): readonly FenceLine[] {
  const said = ramp.brief.surface.kind === 'stepped' ? 'tread' : 'slope';
  return runSides(ramp.run, (side) => brief.fences.ramp[side], `${ramp.brief.path}.${said}`);
}

/** The two ends of the level dock of a ramp, where one of its fences may be parted; null where it has none. */
export function dockEnds(ramp: Ramp): Ends | null {
  const parts = rampParts(ramp);
  const i = parts.findIndex(({ kind }) => kind === 'dock');
  const dock = parts[i];
  if (dock === undefined) return null;
  const end = (last: boolean): SpanEnd => ({ kind: last ? 'free' : 'joint' });
  return { start: evenStop(end(i === 0), dock.from), end: evenStop(end(i === parts.length - 1), dock.to) };
}

/** A ramp's fence: a span for its sloping part, one or more for its dock, one post where the slope breaks. `cuts`: openings of the dock. */
export function rampFence(ramp: Ramp, line: FenceLine, cuts: readonly Cut[]): Fence {
  let firstBay = 1;
  const spans = rampParts(ramp).flatMap((part): readonly Span[] => {
    const made = part.kind === 'slope' ? [slopeSpan(ramp, line, part)] : makeSpans(line, dockEnds(ramp)!.start, dockEnds(ramp)!.end, cuts);
    const own = made.map((span) => ({ ...span, firstBay: span.firstBay + firstBay - 1 }));
    const last = own[own.length - 1]!;
    firstBay = last.firstBay + last.posts.length - 1;
    return own;
  });
  return { ...line, spans };
}

/** Equal bays; the post line is measured along the slope, as its rails run. */
function slopeSpan(ramp: Ramp, line: FenceLine, { from, to }: RampPart): Span {
  const postLine = (to - from) / Math.cos(ramp.figures.slope);
  const bays = Math.max(1, Math.ceil((postLine - SAME_LENGTH) / line.brief.postSpacing));
  const posts = Array.from({ length: bays + 1 }, (_, i) => inches(i === bays ? to : from + ((to - from) * i) / bays));
  const alone = dockEnds(ramp) === null;
  const first = from < SAME_LENGTH;
  const end = (outer: boolean): SpanEnd => ({ kind: outer || alone ? 'free' : 'joint' });
  return { start: end(first), end: end(!first), posts, firstBay: 1, railStops: posts, skinFrom: from, skinTo: to };
}

/** The posts of a ramp's fence: plumb, in the ground beside the ramp, as tall as the line at their place and the fence over it. */
export function rampPosts(brief: Brief, ramp: Ramp, fence: Fence): readonly Post[] {
  return fence.spans.flatMap((span, part) => span.posts.flatMap((u, i): readonly Post[] => {
    const last = i === span.posts.length - 1;
    // The post at the break belongs to the bay that begins at it.
    if (last && span.end.kind === 'joint' && part < fence.spans.length - 1) return [];
    const end = i === 0 ? span.start : last ? span.end : null;
    const section = end?.kind === 'jamb' && end.post !== undefined ? end.post : fence.brief.post;
    const fenceHeight = inches(lineHeight(ramp.figures, fromLowEnd(ramp, u)) + fence.brief.height);
    return [{
      kind: end?.kind === 'jamb' ? 'jamb-post' : 'post',
      at: facePoint(fence, u, section === fence.brief.post ? fence.section.k : jambOffset(fence, section)),
      section,
      length: inches(fenceHeight + brief.footings.depth),
      fenceHeight,
      run: fence.run,
      side: fence.side,
      bay: span.firstBay + i,
      u,
      hole: brief.footings,
      alsoEnds: null,
    }];
  }));
}
