/** What lies in the plan, turned so that a run's start is the view's zero and the cattle walk along +x. */
import { inches } from '../../base/quantity.ts';
import { planPoint, viewPoint, type Vec } from '../../base/points.ts';
import { type Curve } from '../../base/curve.ts';
import { PENS } from '../../drafting/kit.ts';
import { type CalloutSpec, type Shape } from '../../drafting/model.ts';
import { type Pen } from '../../drafting/primitives.ts';
import { type Run } from '../../layout/index.ts';
import { turnPlan, type Turn } from '../bounds.ts';
import { gatePlanShapes } from '../gate-plan.ts';
import { type DrawInput } from '../input.ts';
import { faceShapes, postPieces } from '../site-view.ts';

export const turnTo = ({ path, headings }: Run): Turn => {
  if (path.kind !== 'line') throw new Error('a run that is not straight');
  return turnPlan(path.a, headings[0]);
};

export const segment = (pen: Pen, a: Vec, b: Vec): Shape => ({ kind: 'curve', pen, curve: { kind: 'line', a: viewPoint(a.x, a.y), b: viewPoint(b.x, b.y) } });

/** An arrow along +x whose tip is as far as `length` from its tail. */
export function arrow(pen: Pen, from: Vec, length: number): readonly Shape[] {
  const tip = { x: from.x + length, y: from.y };
  const barb = Math.min(6, length / 4);
  return [segment(pen, from, tip), ...[-1, 1].map((side) => segment(pen, tip, { x: tip.x - barb, y: tip.y + (side * barb) / 3 }))];
}

/** The way of the cattle: a centerline with an arrow at its end. */
export const walk = (length: number): readonly Shape[] =>
  [segment(PENS.center, { x: 0, y: 0 }, { x: length, y: 0 }), ...arrow(PENS.note, { x: length, y: 0 }, Math.min(24, length / 4))];

/** A rectangle by two opposite corners. */
export function rectangle(pen: Pen, low: Vec, high: Vec): readonly Shape[] {
  const corners = [low, { x: high.x, y: low.y }, high, { x: low.x, y: high.y }];
  return corners.map((corner, i) => segment(pen, corner, corners[(i + 1) % 4]!));
}

function turned(turn: Turn, shape: Shape): Shape {
  if (shape.kind === 'circle') return { ...shape, center: turn.point(shape.center) };
  const { curve } = shape;
  const plan: Curve<ReturnType<typeof planPoint>> = curve.kind === 'line'
    ? { kind: 'line', a: planPoint(curve.a.x, curve.a.y), b: planPoint(curve.b.x, curve.b.y) }
    : { ...curve, center: planPoint(curve.center.x, curve.center.y) };
  return { ...shape, curve: turn.curve(plan) };
}

/** Faces, posts and gates of these runs. */
export function runShapes({ layout, parts }: DrawInput, turn: Turn, runs: ReadonlySet<string>): readonly Shape[] {
  const pieceOf = postPieces(parts);
  return [
    ...[...faceShapes(layout, runs), ...gatePlanShapes(layout, runs)].map((shape) => turned(turn, shape)),
    ...layout.posts.filter((post) => runs.has(post.run) || (post.alsoEnds !== null && runs.has(post.alsoEnds.run))).map((post): Shape => {
      const piece = pieceOf(post);
      const circle = { kind: 'circle', center: turn.point(post.at), radius: inches(post.section.across / 2), pen: PENS.thin } as const;
      return piece === undefined ? circle : { ...circle, piece: piece.key };
    }),
  ];
}

export const note = (text: string, target: Vec, toward: Vec): CalloutSpec =>
  ({ text, target: viewPoint(target.x, target.y), piece: null, toward, layer: 'NOTES' });
