/** Stepped ramps and their docks as they are cast. Inches and cubic inches. */
import { inches, type Inches } from '../../base/quantity.ts';
import { type Ramp } from '../../layout/index.ts';

/** One row of forms: a riser, from the foot up. */
export interface FormRow {
  readonly step: number;
  /** How far its face stands from the lowest riser's, level. */
  readonly back: Inches;
  /** Its upper edge over the ground. */
  readonly top: Inches;
}
export interface RampConcrete {
  readonly forms: readonly FormRow[];
  /** Steps and dock cast solid between the forms, on level ground. */
  readonly volume: number;
}

/** The concrete of a stepped ramp; null where it is not cast. The last form is the dock's own edge. */
export function rampConcrete({ brief, figures }: Ramp): RampConcrete | null {
  const { surface, height, dockLength } = figures;
  if (surface.kind === 'cleated') return null;
  const { risers, riser, tread } = surface;
  const forms = Array.from({ length: risers }, (_, i): FormRow => ({
    step: i + 1, back: inches(i * tread), top: inches(i === risers - 1 ? height : (i + 1) * riser),
  }));
  const side = forms.slice(0, -1).reduce((sum, { top }) => sum + top * tread, 0) + height * dockLength;
  return { forms, volume: side * brief.width };
}
