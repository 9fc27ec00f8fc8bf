import { inches, type Inches } from '../base/quantity.ts';
import { type Brief } from '../brief/types.ts';
import { type Layout } from '../layout/index.ts';

/** A concrete floor between the faces of its fences. Square and cubic inches, posts and edges not taken out. */
export interface FloorSlab {
  readonly run: 'crowd-pen' | 'junction' | 'chute' | 'squeeze-pad';
  readonly area: number;
  readonly thickness: Inches;
  readonly volume: number;
  /** How far the floor falls from its high end to its low end along the way of the cattle. */
  readonly drop: Inches;
}

/**
 * The floors of a facility in walking order. Areas: the pen's sector R²S/2; the junction's trapezoid between R and the chute's width; the
 * chute's width by its centerline (exact on an arc too); the pad's rectangle.
 */
export function floorSlabs(brief: Brief, layout: Layout): readonly FloorSlab[] {
  const { radius, sweep } = brief.crowdPen;
  const { width } = brief.chute;
  const { thickness, fall } = brief.floors;
  const m = layout.mouthDistance;
  const along = layout.runs.reduce((sum, run) => (run.from === null ? sum : sum + run.length), 0);
  const slab = (run: FloorSlab['run'], area: number, length: number): FloorSlab =>
    ({ run, area, thickness, volume: area * thickness, drop: inches(length * fall) });
  const pad = brief.squeezePad;
  return [
    slab('crowd-pen', (radius ** 2 * sweep) / 2, radius * sweep),
    ...(m > 0 ? [slab('junction', (m * (radius + width)) / 2, m)] : []),
    slab('chute', width * along, along),
    ...(pad === null ? [] : [slab('squeeze-pad', pad.length * pad.width, pad.length)]),
  ];
}
