/** Flat parts laid on stock sheets. Inches; a sheet's long side lies along x, its lower left corner at the origin. */
import { type FlatShape } from '../../base/flat-shape.ts';
import { type Vec } from '../../base/points.ts';
import { type Inches } from '../../base/quantity.ts';
import { type Turn } from '../plates/move-shape.ts';

export interface NestPart {
  readonly id: string;
  readonly quantity: number;
  readonly shape: FlatShape;
  /** Its x stays along the sheet's long side, in which it was rolled at the mill: for what is bent after. */
  readonly along: boolean;
}

export interface SheetSize {
  readonly long: Inches;
  readonly short: Inches;
}

/** A part in its place: its shape turned about the origin, then moved by `at`. */
export interface NestedPart {
  readonly id: string;
  readonly turn: Turn;
  readonly at: Vec;
}

export interface NestedSheet {
  readonly size: SheetSize;
  readonly parts: readonly NestedPart[];
  /** How many sheets are cut so. */
  readonly count: number;
  /** Area of the parts over that of the sheet. */
  readonly utilization: number;
}

export interface Nest {
  readonly sheets: readonly NestedSheet[];
  /** Parts that no stock sheet holds. */
  readonly left: readonly NestPart[];
  /** Square inches of all parts laid, and of all sheets. */
  readonly partArea: number;
  readonly stockArea: number;
  /** What no plan with parts laid square to the sheet can undercut. */
  readonly least: { readonly sheets: number; readonly stockArea: number };
}
