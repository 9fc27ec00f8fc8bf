/** The squeeze pad, its roof, the floors and the sort pens as the brief asks for them. */
import { type Inches } from '../base/quantity.ts';
import { type Side } from './side.ts';

/** A side of the pad's roof: where the cattle come in, where they go out, or one of the two beside them. */
export type RoofSide = 'in' | 'out' | Side;

/** A roof over the pad: its outline alone. What holds it up is a licensed engineer's. */
export interface RoofBrief {
  /** Along the way of the cattle. */
  readonly length: Inches;
  readonly width: Inches;
  /** Sides without cladding. */
  readonly open: readonly RoofSide[];
  /** Share of the roof, 0 to 1, that lets daylight through. */
  readonly daylight: number;
}

/** The slab on which the squeeze chute stands, past the chute's last run. */
export interface SqueezePadBrief {
  readonly length: Inches;
  /** Clear, between its two fences. */
  readonly width: Inches;
  /** null: none. */
  readonly roof: RoofBrief | null;
}

/** A pen past the squeeze, into which a sort gate turns cattle. */
export interface SortPenBrief {
  /** Its run: `sort-1` …. */
  readonly name: string;
  readonly side: Side;
  /** Clear width of its gate. */
  readonly gate: Inches;
  /** Where in the file it is said: `sortPens[0]`. */
  readonly path: string;
}

/** The concrete floors. */
export interface FloorsBrief {
  /** Inches down an inch along. */
  readonly fall: number;
  readonly thickness: Inches;
  /** What keeps feet from slipping, in the words of the brief. */
  readonly pattern: string;
}
