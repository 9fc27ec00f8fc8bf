import { type PlanPoint } from '../base/points.ts';
import { type Brief } from '../brief/types.ts';
import { seeAhead } from '../checks/index.ts';
import { type Layout } from '../layout/index.ts';

/** A line along which an animal looks, as the see-ahead rule takes it: every face solid. */
export interface SightLine {
  readonly from: PlanPoint;
  readonly to: PlanPoint;
  /** Where it grazes a wall on its way; null where none ends the view. */
  readonly graze: PlanPoint | null;
}

/** The sight lines behind the see-ahead rule: from the mouth to where the view of the chute's centerline ends. */
export function sightLines(_brief: Brief, layout: Layout): readonly SightLine[] {
  const sight = seeAhead(layout.runs);
  return [{ from: sight.eye, to: sight.end, graze: sight.graze }];
}
