/** Holding pens as the brief asks for them, their sizes worked out by area a head. */
import { type Inches } from '../base/quantity.ts';
import { type Section } from '../steel/types.ts';
import { type PenGateBrief } from './opening-brief.ts';
import { type RunBrief } from './run-brief.ts';
import { type Side } from './side.ts';

/**
 * Least area of a holding pen for each head, square feet: the figures of the rule `holding-area` (Univ. of Arkansas Extension, companion
 * to MP239; read).
 */
export const HOLDING_AREA = { calf: 14, yearling: 17, mature: 20 } as const;

/** A pen beside the drive alley, upstream of the alley. */
export interface HoldingPenBrief {
  /** The stretch of the drive alley before it: `hold-1` …. */
  readonly name: string;
  readonly head: number;
  /** Clear, along the drive alley. */
  readonly length: Inches;
  /** Clear, away from it. */
  readonly width: Inches;
  /** Clear width of its gate onto the drive alley. */
  readonly gate: Inches;
  readonly swings: PenGateBrief['swings'];
  readonly hangs: PenGateBrief['hangs'];
  readonly hingePost: Section | null;
  /** Where in the file it is said: `holdingPens[0]`. */
  readonly path: string;
}

/** A way back to the alley for a missed animal: from a gate in a fence past the squeeze, run by run like a chute. */
export interface ReturnAlleyBrief {
  /** The fence that it leaves by: its run (`chute` for a station from the mouth), its side, and the middle of the gate along it. */
  readonly from: { readonly run: string; readonly side: Side; readonly at: Inches };
  /** Clear width, and that of its gate. */
  readonly width: Inches;
  readonly runs: readonly RunBrief[];
}
