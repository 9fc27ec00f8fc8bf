import { type PlanPoint } from '../../base/points.ts';
import { type Brief } from '../../brief/types.ts';
import { type Layout } from '../../layout/index.ts';

/** A point that tapes are held at. A is the pivot post's center. */
export interface ControlPoint {
  readonly name: 'A' | 'B' | 'C';
  readonly at: PlanPoint;
}

/** The control points that the brief has, in order. */
export function controlPoints(brief: Brief, layout: Layout): readonly ControlPoint[] {
  const { b, c } = brief.control;
  return [
    { name: 'A', at: layout.pivot },
    { name: 'B', at: b },
    ...(c === null ? [] : [{ name: 'C' as const, at: c }]),
  ];
}
