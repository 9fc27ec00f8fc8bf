/**
 * A drawing as plain data: views with a scale, each with shapes, dimensions and callouts in inches of steel, and tables and notes.
 * Nothing here knows where a text will stand: the drafting step finds that out.
 */
import { type Curve } from '../base/curve.ts';
import { type SheetPoint, type Vec, type ViewPoint } from '../base/points.ts';
import { type Inches, type Radians } from '../base/quantity.ts';
import { type WeldSymbol } from '../base/weld-symbol.ts';
import { type Rect } from './boxes.ts';
import { type Paper, type Pen } from './primitives.ts';

/** A line, arc or circle of steel (or an axis) in true inches; `piece` where it is a piece's outline. */
export type Shape =
  | { readonly kind: 'curve'; readonly curve: Curve<ViewPoint>; readonly pen: Pen; readonly piece?: string }
  | { readonly kind: 'circle'; readonly center: ViewPoint; readonly radius: Inches; readonly pen: Pen; readonly piece?: string };

/**
 * What is measured, between which points, and where its line may stand: `offsets` in paper inches, tried in order, to the left of
 * from → to for a linear or aligned one, outward from the arc for an arc, and from the corner for an angle.
 */
export type DimensionSpec = {
  /** Drawn whatever it costs, or left out where no offset is clear. */
  readonly required: boolean;
  /** Words before the figure ("R" and the like come by themselves). */
  readonly prefix?: string;
  /** Print the decimal in brackets: bends and plates. */
  readonly decimal?: boolean;
  /** Text of a chain's member. */
  readonly chained?: string;
} & (
  | { readonly measure: 'linear'; readonly along: 'x' | 'y'; readonly from: ViewPoint; readonly to: ViewPoint; readonly offsets: readonly number[] }
  | { readonly measure: 'aligned'; readonly from: ViewPoint; readonly to: ViewPoint; readonly offsets: readonly number[] }
  /** `angles`: where on the arc its arrow may stand, tried in order. */
  | { readonly measure: 'radius'; readonly center: ViewPoint; readonly radius: Inches; readonly angles: readonly Radians[] }
  | { readonly measure: 'diameter'; readonly center: ViewPoint; readonly radius: Inches; readonly angles: readonly Radians[] }
  /** Counter-clockwise from one direction to the other. */
  | { readonly measure: 'angle'; readonly center: ViewPoint; readonly from: Radians; readonly to: Radians; readonly offsets: readonly number[] }
  | { readonly measure: 'arc'; readonly center: ViewPoint; readonly radius: Inches; readonly from: Radians; readonly to: Radians; readonly offsets: readonly number[] }
);

/** Positions along one line from one datum, each a dimension of its own; texts are spread so that none touch. */
export interface Running {
  readonly along: 'x' | 'y';
  readonly datum: ViewPoint;
  /** Ascending along the line; the datum itself is not among them. */
  readonly at: readonly ViewPoint[];
  /** Paper inches from the view's origin side: the dimension line's place, below (x) or to the left (y) of the datum. */
  readonly line: number;
  /** How far before and after the datum the texts may spread, paper inches; without it as far as the view reaches. */
  readonly limits?: readonly [number, number];
}

/** Marks in a row above the steel, each with a leader that ends on its pieces. */
export interface Band {
  /** Height of the steel's upper edge: leaders jog above it. */
  readonly top: Inches;
  readonly labels: readonly BandLabel[];
}
export interface BandLabel {
  readonly text: string;
  /** One x for all targets: the leader drops plumb through them. */
  readonly x: Inches;
  readonly targets: readonly { readonly y: Inches; readonly piece: string }[];
}

/** A word or mark on a leader that finds its own place. */
export interface CalloutSpec {
  readonly text: string;
  readonly target: ViewPoint;
  readonly piece: string | null;
  /** Direction in which to look for room first. */
  readonly toward: Vec;
  readonly layer: 'MARKS' | 'NOTES';
  /** A callout that may be dropped (said elsewhere on the drawing). */
  readonly optional?: boolean;
  /** Where else on the same thing its leader may end. */
  readonly others?: readonly ViewPoint[];
  /** Better dropped than on a long leader. */
  readonly near?: boolean;
}

export type { WeldKind, WeldMark, WeldSymbol } from '../base/weld-symbol.ts';

/** A weld symbol whose arrow ends on a joint, and that finds its own place. */
export interface WeldSpec extends WeldSymbol {
  readonly target: ViewPoint;
  /** Direction in which to look for room first. */
  readonly toward: Vec;
  /** May be left out where it has no room (said elsewhere on the drawing or in the set). */
  readonly optional?: boolean;
}

export interface View {
  readonly id: string;
  readonly title: string;
  /** Paper inches an inch of steel. */
  readonly scale: number;
  readonly scaleText: string;
  /** Where on the paper the view's (0, 0) stands. */
  readonly at: SheetPoint;
  /** Room on the paper, its title line included at the foot. */
  readonly box: Rect;
  readonly shapes: readonly Shape[];
  readonly dimensions: readonly DimensionSpec[];
  readonly runnings: readonly Running[];
  readonly bands: readonly Band[];
  readonly callouts: readonly CalloutSpec[];
  readonly welds?: readonly WeldSpec[];
  /** Places that a revision changed, inches of steel: each gets a cloud and the revision's letter. */
  readonly clouds?: readonly { readonly left: number; readonly right: number; readonly low: number; readonly high: number }[];
}

export interface Column {
  readonly title: string;
  readonly align: 'start' | 'end';
}
/** A table whose rows fit its box: `tablePages` cuts a longer one. */
export interface Table {
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
  readonly at: SheetPoint;
  readonly widths: readonly number[];
}

/** Words in a column, wrapped. `at` is the upper left corner. */
export interface Note {
  readonly title: string;
  readonly lines: readonly string[];
  readonly at: SheetPoint;
  readonly width: number;
}

/** A length of a bar. */
export type BarPart =
  /** `words`: the first of them that has room stands in it. */
  | { readonly kind: 'piece'; readonly length: Inches; readonly words: readonly string[] }
  /** `kept` goes back on the rack, `scrap` does not, `trim` is cut off first. */
  | { readonly kind: 'trim' | 'kerf' | 'kept' | 'scrap'; readonly length: Inches };

export interface BarHeading {
  readonly kind: 'heading';
  readonly title: string;
  readonly words: string;
}
/** Bars that are cut alike. */
export interface BarRow {
  readonly kind: 'row';
  readonly count: number;
  /** Beside the bar, over a box to tick for each. */
  readonly lines: readonly string[];
  readonly parts: readonly BarPart[];
  /** Its cuts in words, under the bar. */
  readonly words: string;
}
/** Bars and how they are cut; its entries fit the page. `at` is the upper left corner, `left` the paper beside the bars. */
export interface BarChart {
  readonly at: SheetPoint;
  readonly width: number;
  readonly left: number;
  /** Paper inches an inch of bar. */
  readonly scale: number;
  readonly entries: readonly (BarHeading | BarRow)[];
}

/** Consecutive entries of a chart: `to` is the first that is not among them. */
export interface BarRange {
  readonly chart: BarChart;
  readonly from: number;
  readonly to: number;
}

export interface Drawing {
  readonly number: string;
  readonly title: string;
  readonly file: string;
  readonly paper: Paper;
  readonly scale: number;
  readonly scaleText: string;
  readonly views: readonly View[];
  readonly tables: readonly Table[];
  readonly notes: readonly Note[];
  readonly bars?: readonly BarChart[];
  /** Room kept for the words of numbered bubbles. */
  readonly overflow?: Rect;
  /** Those of its tables and notes, and of its bars, that a revision changed. */
  readonly cloudedTables?: readonly Table[];
  readonly cloudedNotes?: readonly Note[];
  readonly cloudedBars?: readonly BarRange[];
}

/** What every drawing of a set has in common. */
export interface TitleBlock {
  readonly project: string;
  readonly client: string;
  readonly revision: string;
  readonly date: string;
  readonly units: 'in' | 'mm';
}
