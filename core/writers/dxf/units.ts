/** From the paper to the units of a DXF drawing: 1 in of steel, or 1 mm. */
import { MM_PER_INCH } from '../../base/quantity.ts';
import { type Vec, scale } from '../../base/points.ts';
import { type Sheet } from '../../drafting/primitives.ts';

export interface Units {
  /** Drawing units for an inch of paper. */
  readonly perInch: number;
  readonly metric: boolean;
  point(paper: Vec): Vec;
  length(paper: number): number;
}

/** The units of a sheet. Throws where its scale is not above zero. */
export function unitsOf(sheet: Sheet): Units {
  if (!(sheet.scale > 0) || sheet.scale === Infinity) throw new Error(`sheet ${sheet.number} has no scale: ${String(sheet.scale)}`);
  const metric = sheet.units === 'mm';
  const perInch = (metric ? MM_PER_INCH : 1) / sheet.scale;
  return { perInch, metric, point: (paper) => scale(paper, perInch), length: (paper) => paper * perInch };
}

/** Degrees in [0, 360), as the format counts them. */
export function turnDegrees(angle: number): number {
  const turned = ((angle * 180) / Math.PI) % 360;
  const positive = turned < 0 ? turned + 360 : turned;
  return positive > 360 - 1e-12 ? 0 : positive;
}
