/** What a weld symbol says (AWS A2.4), as plain data: schedules count by it, drawings draw it. */
import { type Inches } from './quantity.ts';

/** What stands on one side of a weld symbol's reference line; lengths in inches of steel, null where nothing is said. */
export interface WeldMark {
  readonly kind: WeldKind;
  readonly size: Inches | null;
  /** Of each stitch, and from middle to middle of two; without both the weld runs the whole joint. */
  readonly length: Inches | null;
  readonly pitch: Inches | null;
}
export type WeldKind = 'fillet' | 'square' | 'flare-bevel' | 'flare-vee';

/** A weld symbol after AWS A2.4: `arrow` stands below the reference line, `other` above it. */
export interface WeldSymbol {
  readonly arrow: WeldMark | null;
  readonly other: WeldMark | null;
  readonly allRound: boolean;
  /** Laid in the field, not in the shop. */
  readonly field: boolean;
  /** Words in the tail. */
  readonly tail: string | null;
}
