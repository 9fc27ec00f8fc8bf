/**
 * What stands on the paper. Every writer and the screen draw these and nothing else. Paper inches, origin at the lower left
 * corner, y up. Figures are full doubles: writers round where they write.
 */
import { type Inches, type Radians } from '../base/quantity.ts';
import { type SheetPoint } from '../base/points.ts';

/** Layers by what is on them. */
export const LAYERS = ['STEEL', 'HIDDEN', 'CENTER', 'SIZES', 'NOTES', 'MARKS', 'FRAME'] as const;
export type LayerName = (typeof LAYERS)[number];

/** 0.6 and 0.3 mm (ASME Y14.2). */
export const LINE_WEIGHT_MM = { thick: 0.6, thin: 0.3 } as const;
export type LineWeight = keyof typeof LINE_WEIGHT_MM;

/** Dash patterns in paper inches, on and off by turns. Dashed for hidden, chain for centerlines. */
export const DASHES = { solid: [], hidden: [0.12, 0.06], center: [0.5, 0.06, 0.1, 0.06] } as const;
export type Dash = keyof typeof DASHES;

export interface Pen {
  readonly layer: LayerName;
  readonly weight: LineWeight;
  readonly dash: Dash;
}

/** A mark on the paper. `piece` is the key of the piece whose outline it belongs to. */
export type Stroke =
  | { readonly kind: 'line'; readonly pen: Pen; readonly a: SheetPoint; readonly b: SheetPoint; readonly piece?: string }
  | {
      readonly kind: 'arc';
      readonly pen: Pen;
      readonly center: SheetPoint;
      readonly radius: Inches;
      readonly start: Radians;
      /** Signed, counter-clockwise positive, within one turn. */
      readonly sweep: Radians;
      readonly piece?: string;
    }
  | { readonly kind: 'circle'; readonly pen: Pen; readonly center: SheetPoint; readonly radius: Inches; readonly piece?: string }
  /** Filled: arrowheads (three points) and scale bars (four, in order round). */
  | { readonly kind: 'fill'; readonly layer: LayerName; readonly points: readonly SheetPoint[] }
  /** Filled circle: the end of a leader on a piece. */
  | { readonly kind: 'dot'; readonly layer: LayerName; readonly center: SheetPoint; readonly radius: Inches }
  | {
      readonly kind: 'text';
      readonly layer: LayerName;
      readonly text: string;
      /** On the baseline: its start, middle or end as `anchor` says. */
      readonly at: SheetPoint;
      readonly anchor: 'start' | 'middle' | 'end';
      /** Height of a capital. */
      readonly height: Inches;
      readonly rotation: Radians;
      /** Measured by the font's metrics at this height. */
      readonly width: Inches;
    };

export type DimensionKind = 'linear' | 'aligned' | 'radius' | 'diameter' | 'angle' | 'arc';

/**
 * A dimension with what is drawn of it. A DXF makes a DIMENSION of it (`arc` excepted, which is drawn) with `strokes` as its block.
 * - linear: `from`, `to` witness points; measured along `rotation` (0 across, π/2 up); dimension line through `line`.
 * - aligned: the same, measured straight between the two.
 * - radius: `from` the center, `to` on the arc. diameter: the two ends.
 * - angle: `center`, sides through `from` and `to`, counter-clockwise from `from`; dimension arc through `line`.
 * - arc: `center`, along the arc of radius |center-from| from `from` to `to`, counter-clockwise.
 */
export interface Dimension {
  readonly kind: 'dimension';
  readonly measure: DimensionKind;
  /** The view it stands in: its scale turns paper into steel. */
  readonly view: string;
  readonly from: SheetPoint;
  readonly to: SheetPoint;
  readonly center: SheetPoint | null;
  readonly line: SheetPoint;
  readonly rotation: Radians;
  /** Steel inches (radians for an angle), measured by the geometry. */
  readonly value: number;
  /** As printed. */
  readonly text: string;
  /** Middle of the printed text. */
  readonly textAt: SheetPoint;
  /** A member of a chain, whose text is the difference of two rounded running figures. */
  readonly chained: boolean;
  readonly strokes: readonly Stroke[];
}

/** A mark, note or weld symbol on a leader. `targets` are where the leader's dots or arrowheads stand. */
export interface Callout {
  readonly kind: 'callout';
  readonly view: string;
  readonly text: string;
  /** Keys of the pieces it marks, one for each target; empty for a note. */
  readonly pieces: readonly string[];
  readonly targets: readonly SheetPoint[];
  readonly strokes: readonly Stroke[];
  /** Of a weld symbol: the arrow alone, from the joint to the reference line's end. Its `text` is the first of those printed. */
  readonly arrow?: readonly [SheetPoint, SheetPoint];
}

export type Primitive = Stroke | Dimension | Callout;

/** Where one view stands on the paper. */
export interface PlacedView {
  readonly id: string;
  readonly title: string;
  /** Paper inches for an inch of steel. */
  readonly scale: number;
  /** As printed: 1:24, or 1/2" = 1'-0". */
  readonly scaleText: string;
  /** Where its steel's (0, 0) stands: a point of it stands at that and `scale` times itself. */
  readonly at: SheetPoint;
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}

export interface Paper {
  readonly name: string;
  readonly width: Inches;
  readonly height: Inches;
  /** Least letter height, inches. */
  readonly text: Inches;
}

/** One drawing, drafted. */
export interface Sheet {
  readonly number: string;
  readonly title: string;
  /** `101 plan`: the file name without its ending. */
  readonly file: string;
  readonly paper: Paper;
  /** The drawing's own scale: 1 unit of DXF is 1 in of steel (or 1 mm) at this scale. 1 where nothing is to scale. */
  readonly scale: number;
  readonly units: 'in' | 'mm';
  readonly views: readonly PlacedView[];
  readonly primitives: readonly Primitive[];
}

/** All strokes of a sheet, those inside dimensions and callouts included, in drawing order. */
export function strokesOf(primitives: readonly Primitive[]): Stroke[] {
  const out: Stroke[] = [];
  for (const item of primitives) {
    if (item.kind === 'dimension' || item.kind === 'callout') out.push(...item.strokes);
    else out.push(item);
  }
  return out;
}
