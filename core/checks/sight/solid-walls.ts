import { type Curve } from '../../base/curve.ts';
import { type PlanPoint } from '../../base/points.ts';
import { faceCurve, type Layout } from '../../layout/index.ts';

/** A face as far as it is closed: between two heights over the ground. */
export interface SolidWall {
  readonly run: string;
  readonly side: string;
  readonly face: Curve<PlanPoint>;
  readonly from: number;
  readonly to: number;
}

/** Every closed face on level ground. Openings are taken as open; the sides of ramps, which rise with them, as not there. */
export function solidWalls({ fences, ramps }: Layout): readonly SolidWall[] {
  const sloping = new Set(ramps.map((ramp) => ramp.name));
  return fences.flatMap((fence): SolidWall[] => {
    const { sheet, solidFrom, solidTo } = fence.brief;
    if (sheet === null || solidTo <= solidFrom || sloping.has(fence.run)) return [];
    return fence.spans.map((span) => ({ run: fence.run, side: fence.side, face: faceCurve(fence, span.skinFrom, span.skinTo, 0), from: solidFrom, to: solidTo }));
  });
}
