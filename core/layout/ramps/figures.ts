/** The figures of a ramp (geometry contract, Ramps). Lengths in inches. */
import { inches, radians, type Inches, type Radians } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type RampBrief } from '../../brief/types.ts';

/** The greatest riser of a stepped ramp (geometry contract). */
const MOST_RISER = 3.5;
/** Clear gap from the foot to the first cleat and from each cleat to the next (geometry contract). */
const CLEAT_GAP = 8;

export interface StepFigures {
  readonly kind: 'stepped';
  readonly risers: number;
  readonly riser: Inches;
  readonly tread: Inches;
}
export interface CleatFigures {
  readonly kind: 'cleated';
  readonly cleat: Inches;
  readonly gap: Inches;
  /** Where the lower edge of each cleat stands, up the slope from the foot. */
  readonly cleats: readonly Inches[];
}
export interface RampFigures {
  /** From the ground at the low end to the dock. */
  readonly height: Inches;
  /** Level, from the foot to the dock's edge. */
  readonly run: Inches;
  readonly slope: Radians;
  /** Along the slope: the cleated surface, or the line of the nosings from the lowest to the dock's edge. */
  readonly slopeLength: Inches;
  readonly dockLength: Inches;
  /** How high the line that the fence follows (nosings or surface) stands over the ground at the foot: a riser, or nothing. */
  readonly foot: Inches;
  readonly surface: StepFigures | CleatFigures;
}

export function rampFigures(brief: Pick<RampBrief, 'dockHeight' | 'dockLength' | 'surface'>): RampFigures {
  const { dockHeight: height, dockLength, surface } = brief;
  if (surface.kind === 'stepped') {
    // A height of whole risers that came through millimeters must not take one more by the last bit of a double.
    const risers = Math.ceil((height - SAME_LENGTH) / MOST_RISER);
    const riser = inches(height / risers);
    const run = inches((risers - 1) * surface.tread);
    const slope = radians(Math.atan2(riser, surface.tread));
    return {
      height, run, slope, slopeLength: inches(run / Math.cos(slope)), dockLength, foot: riser,
      surface: { kind: 'stepped', risers, riser, tread: surface.tread },
    };
  }
  const { slope, cleat } = surface;
  const slopeLength = inches(height / Math.sin(slope));
  const count = Math.floor((slopeLength + SAME_LENGTH) / (CLEAT_GAP + cleat));
  return {
    height, run: inches(height / Math.tan(slope)), slope, slopeLength, dockLength, foot: inches(0),
    surface: {
      kind: 'cleated', cleat, gap: inches(CLEAT_GAP),
      cleats: Array.from({ length: count }, (_, i) => inches(CLEAT_GAP + i * (CLEAT_GAP + cleat))),
    },
  };
}

/** How high the line that the fence follows stands over the ground, `s` inches (level) from the low end. */
export function lineHeight({ run, slope, height, foot }: RampFigures, s: number): Inches {
  return inches(s >= run - SAME_LENGTH ? height : foot + s * Math.tan(slope));
}
