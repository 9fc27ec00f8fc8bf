import { inches, type Inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Brief } from '../../brief/types.ts';
import { runSides, type FenceLine } from '../fence-line.ts';
import { facePoint } from '../fence-points.ts';
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

/** The fences of a ramp, left then right: a span for each part, one post where the slope breaks. */
export function rampFences(brief: Brief, ramp: Ramp): readonly Fence[] {
  const said = ramp.brief.surface.kind === 'stepped' ? 'tread' : 'slope';
  const lines = runSides(ramp.run, (side) => brief.fences.ramp[side], `${ramp.brief.path}.${said}`);
  return lines.map((line) => ({ ...line, spans: spansOf(ramp, line) }));
}

function spansOf(ramp: Ramp, line: FenceLine): readonly Span[] {
  const parts = rampParts(ramp);
  let firstBay = 1;
  return parts.map((part, i) => {
    const posts = bayPosts(ramp, line, part);
    const end = (last: boolean): SpanEnd => ({ kind: last ? 'free' : 'joint' });
    const span: Span = {
      start: end(i === 0), end: end(i === parts.length - 1), posts, firstBay, railStops: posts, skinFrom: part.from, skinTo: part.to,
    };
    firstBay += posts.length - 1;
    return span;
  });
}

/** Equal bays; the post line of a sloping part is measured along the slope, as its rails run. */
function bayPosts({ figures }: Ramp, line: FenceLine, { kind, from, to }: RampPart): readonly Inches[] {
  const postLine = kind === 'slope' ? (to - from) / Math.cos(figures.slope) : to - from;
  const bays = Math.max(1, Math.ceil((postLine - SAME_LENGTH) / line.brief.postSpacing));
  return Array.from({ length: bays + 1 }, (_, i) => inches(i === bays ? to : from + ((to - from) * i) / bays));
}

/** The posts of a ramp's fence: plumb, in the ground beside the ramp, as tall as the line at their place and the fence over it. */
export function rampPosts(brief: Brief, ramp: Ramp, fence: Fence): readonly Post[] {
  return fence.spans.flatMap((span, part) => span.posts.flatMap((u, i): readonly Post[] => {
    // The post at the break belongs to the bay that begins at it.
    if (i === span.posts.length - 1 && part < fence.spans.length - 1) return [];
    const fenceHeight = inches(lineHeight(ramp.figures, fromLowEnd(ramp, u)) + fence.brief.height);
    return [{
      kind: 'post',
      at: facePoint(fence, u, fence.section.k),
      section: fence.brief.post,
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
