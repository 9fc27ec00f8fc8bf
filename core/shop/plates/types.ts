/** What a table cuts: one entry a piece mark. Inches. */
import { type FlatShape } from '../../base/flat-shape.ts';
import { type Inches } from '../../base/quantity.ts';
import { type Bend, type PieceKind } from '../../parts/index.ts';
import { type Polyline } from '../stroke-text/index.ts';

/** Why a plate is not fit for a table. */
export type PlateRefusal =
  /** A figure of its outline is no finite number. */
  | 'not-finite'
  /** An edge, arc or circle of no size. */
  | 'zero-length'
  /** Two edges that are one. */
  | 'twice'
  /** An outline that does not close on itself, within the gap that a table bears. */
  | 'open'
  /** Edges that cross or touch where no corner is. */
  | 'crossing'
  /** A hole that does not lie inside the outline, or lies in another hole. */
  | 'hole-outside';

export interface Plate {
  readonly mark: string;
  readonly kind: PieceKind;
  /** Sheet or plate by name. */
  readonly section: string;
  readonly thickness: Inches;
  readonly quantity: number;
  /** Its lower left corner at the origin. */
  readonly shape: FlatShape;
  readonly width: Inches;
  readonly height: Inches;
  /** Square inches, holes taken out. */
  readonly area: number;
  /** Of all its outlines. */
  readonly cutLength: Inches;
  readonly pierces: number;
  /** The mark as strokes inside it; null where it has no room for one. */
  readonly etch: readonly Polyline[] | null;
  /** Rolled after it is cut: its length stays along the sheet's where it can. */
  readonly bend: Bend | null;
  /** null: fit for a table. */
  readonly refusal: PlateRefusal | null;
  /** Keys of the pieces that bear the mark. */
  readonly pieces: readonly string[];
}
