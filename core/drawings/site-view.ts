/** The facility seen from above as shapes: faces, posts, holes, the walk's centerline. Shared by plan and stakeout. */
import { inches } from '../base/quantity.ts';
import { type Vec, viewPoint } from '../base/points.ts';
import { PENS } from '../drafting/kit.ts';
import { type Shape } from '../drafting/model.ts';
import { type Pen } from '../drafting/primitives.ts';
import { faceCurve, type Layout, type Post } from '../layout/index.ts';
import { type Parts, type Piece } from '../parts/index.ts';
import { extremesOf, turnPlan } from './bounds.ts';
import { deckExtremes } from './catwalks/shapes.ts';

/** Plan and view are one frame here: the plan is drawn as it lies. */
const AS_IT_LIES = turnPlan({ x: 0, y: 0 }, 0);

/** Faces of the fences of these runs. */
export function faceShapes(layout: Layout, runs: ReadonlySet<string>, pen: Pen = PENS.outline): Shape[] {
  const shapes: Shape[] = [];
  for (const fence of layout.fences) {
    if (!runs.has(fence.run)) continue;
    for (const span of fence.spans) {
      shapes.push({ kind: 'curve', curve: AS_IT_LIES.curve(faceCurve(fence, span.skinFrom, span.skinTo, 0)), pen });
    }
  }
  for (const plate of layout.closingPlates) {
    if (!runs.has(plate.run)) continue;
    shapes.push({ kind: 'curve', curve: { kind: 'line', a: viewPoint(plate.a.x, plate.a.y), b: viewPoint(plate.b.x, plate.b.y) }, pen });
  }
  return shapes;
}

/** The walk's centerline through the alley and the chute. */
export function walkShapes(layout: Layout, runs: ReadonlySet<string>): Shape[] {
  return layout.runs
    .filter((run) => runs.has(run.name) && !run.aside && run.name !== 'crowd-pen' && run.name !== 'junction')
    .map((run): Shape => ({ kind: 'curve', curve: AS_IT_LIES.curve(run.path), pen: PENS.center }));
}

export function postShape(post: Post, piece: Piece | undefined): Shape {
  const shape = { kind: 'circle', center: viewPoint(post.at.x, post.at.y), radius: inches(post.section.across / 2), pen: PENS.thin } as const;
  return piece === undefined ? shape : { ...shape, piece: piece.key };
}

/** The piece of each post of the layout. */
export function postPieces(parts: Parts): (post: Post) => Piece | undefined {
  const at = new Map<string, Piece>();
  const key = (run: string, side: string, bay: number): string => `${run} ${side} ${String(bay)}`;
  for (const piece of parts.pieces) if (piece.kind === 'post') at.set(key(piece.run, piece.side, piece.bay), piece);
  return (post) => at.get(key(post.run, post.side, post.bay));
}

/** Points that hold the box of these runs' steel. */
export function siteExtremes(layout: Layout, runs: ReadonlySet<string>): Vec[] {
  const points: Vec[] = [];
  for (const fence of layout.fences) {
    if (!runs.has(fence.run)) continue;
    for (const span of fence.spans) {
      points.push(...extremesOf(faceCurve(fence, span.skinFrom, span.skinTo, 0)));
      points.push(...extremesOf(faceCurve(fence, span.posts[0]!, span.posts[span.posts.length - 1]!, fence.section.k + fence.section.D / 2)));
    }
  }
  points.push(...deckExtremes(layout, runs));
  if (runs.has('squeeze-pad')) points.push(...layout.roof);
  if (points.length === 0) points.push(layout.pivot, layout.mouth);
  return points;
}
