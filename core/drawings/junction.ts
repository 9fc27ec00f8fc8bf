/** The junction in plan with its sizes, and its two corners enlarged. */
import { curvePoint } from '../base/curve.ts';
import { radians } from '../base/quantity.ts';
import { viewPoint } from '../base/points.ts';
import { hasRoom } from '../drafting/draft.ts';
import { PENS } from '../drafting/kit.ts';
import { type DimensionSpec, type Drawing, type Shape } from '../drafting/model.ts';
import { largerPaper, paperNamed } from '../drafting/paper.ts';
import { faceCurve } from '../layout/index.ts';
import { say } from '../text/index.ts';
import { betweenJambs } from './between-jambs.ts';
import { boundsOf, turnPlan } from './bounds.ts';
import { mouthDetail, pivotDetail } from './corner-details.ts';
import { type Detail, detailView } from './detail.ts';
import { type DrawInput, pageOf } from './input.ts';
import { drawingOf } from './drawing-of.ts';
import { postPieces, postShape } from './site-view.ts';

const PLAN = turnPlan({ x: 0, y: 0 }, 0);

/** The views side by side on one drawing; each on its own, on larger paper if need be, where one has no room for its figures. */
export function junctionDrawings(input: DrawInput): Drawing[] {
  const details = [junctionPlan(input), pivotDetail(input), mouthDetail(input)].filter((detail) => detail !== null);
  const page = pageOf(input);
  const share = (page.room.width - (details.length - 1) * 0.2) / details.length;
  for (const margin of [8, 11]) {
    const views = details.map((detail, i) => detailView(page, detail, { ...page.room, x: page.room.x + i * (share + 0.2), width: share }, margin));
    const drawing = drawingOf(page, { views, tables: [], notes: [] }, '4', 0, say('drawings.junction.all'), say('drawings.junction.file'));
    if (share > 40 * page.kit.h && hasRoom(input.font, page.block, drawing)) return [drawing];
  }
  return details.map((detail, i) => fitted(input, detail, i));
}

/** The detail on the brief's paper, on a larger one where its figures have no room. */
function fitted(input: DrawInput, detail: Detail, index: number): Drawing {
  let paper = paperNamed(input.brief.paper);
  for (;;) {
    const page = pageOf(input, paper);
    for (const margin of [8, 11, 13, 20, 28]) {
      const view = detailView(page, detail, page.room, margin);
      const drawing = drawingOf(page, { views: [view], tables: [], notes: [] }, '4', index, detail.title, say('drawings.junction.file'));
      if (hasRoom(input.font, page.block, drawing)) return drawing;
    }
    const larger = largerPaper(paper);
    if (larger === null) {
      return drawingOf(page, { views: [detailView(page, detail, page.room, 20)], tables: [], notes: [] }, '4', index, detail.title, say('drawings.junction.file'));
    }
    paper = larger;
  }
}

/** From the pivot post to the mouth: funnel, outer face, posts. */
function junctionPlan(input: DrawInput): Detail {
  const { layout, brief } = input;
  const side = brief.crowdPen.hand;
  const sign = side === 'left' ? 1 : -1;
  const pieceOf = postPieces(input.parts);
  const fences = layout.fences.filter((fence) => fence.run === 'junction');
  const shapes: Shape[] = fences.flatMap((fence) => {
    const from = fence.spans[0]!.posts[0]!;
    const to = fence.spans[fence.spans.length - 1]!.posts.at(-1)!;
    const edges = [-1, 1].map((way) => fence.section.kr + (way * fence.section.d) / 2);
    return [
      ...betweenJambs(fence, 0, fence.length).map(([a, b]): Shape => ({ kind: 'curve', curve: PLAN.curve(faceCurve(fence, a, b, 0)), pen: PENS.thin })),
      ...betweenJambs(fence, from, to).flatMap(([a, b]) => edges.map((edge): Shape => ({ kind: 'curve', curve: PLAN.curve(faceCurve(fence, a, b, edge)), pen: PENS.outline }))),
    ];
  });
  const posts = layout.posts.filter((post) => post.run === 'junction' || post.kind === 'pivot-post' || (post.alsoEnds?.run === 'junction'));
  const funnelFace = layout.runs.find((run) => run.name === 'junction')!.faces[side]!;
  const tip = curvePoint(funnelFace, 1);
  const { radius, funnelAngle } = brief.crowdPen;
  const m = layout.mouthDistance;
  const outerFoot = { x: sign * radius, y: 0 };
  const outerTop = { x: sign * radius, y: m };
  // 90° is up the page; the funnel leans from it toward the outer face.
  const lean = sign > 0 ? Math.PI / 2 - funnelAngle : Math.PI / 2 + funnelAngle;
  return {
    id: 'junction',
    title: say('drawings.junction.title'),
    bounds: boundsOf([{ x: 0, y: -6 }, tip, outerFoot, outerTop, ...posts.map((post) => post.at)]),
    shapes: [
      ...shapes,
      { kind: 'curve', pen: PENS.center, curve: { kind: 'line', a: viewPoint(0, 0), b: viewPoint(0, Math.max(m, 24)) } },
      ...posts.map((post) => postShape(post, pieceOf(post))),
    ],
    dimensions: (h) => {
      const outward = (reach: number): number => -sign * reach * h;
      const specs: DimensionSpec[] = [
        { measure: 'linear', along: 'x', required: true, from: viewPoint(0, 0), to: viewPoint(outerFoot.x, outerFoot.y), offsets: [-4, -6, -8, 4, 6].map((reach) => sign * reach * h) },
        { measure: 'linear', along: 'x', required: true, from: viewPoint(tip.x, tip.y), to: viewPoint(outerTop.x, outerTop.y), offsets: [4, 6, 8, 11].map((reach) => sign * reach * h) },
        {
          measure: 'aligned', required: true, from: viewPoint(0, 0), to: viewPoint(tip.x, tip.y),
          offsets: [6, 8, 11, -5, -8].map((reach) => sign * reach * h),
        },
      ];
      if (m > 1e-6) {
        specs.push({ measure: 'linear', along: 'y', required: true, from: viewPoint(outerFoot.x, outerFoot.y), to: viewPoint(outerTop.x, outerTop.y), offsets: [5, 7, 9, 12].map(outward) });
      }
      specs.push({
        measure: 'angle', required: true, center: viewPoint(0, 0), from: radians(Math.min(lean, Math.PI / 2)), to: radians(Math.max(lean, Math.PI / 2)),
        offsets: [14, 18, 24, 10, 32, 7].map((reach) => reach * h),
      });
      return specs;
    },
    callouts: posts.flatMap((post) => {
      const piece = pieceOf(post);
      const toward = { x: post.at.x - sign * radius * 0.6, y: post.at.y - m / 2 };
      return piece === undefined ? [] : [{ text: piece.mark, target: viewPoint(post.at.x, post.at.y), piece: piece.key, toward, layer: 'MARKS' as const, optional: true }];
    }),
  };
}

