/**
 * The live plan, for a screen: what is drawn of the design while a hand moves it, and what may be taken hold of. Drafted by the same
 * step as the drawings, at the scale of the screen, so that a letter has one size there at any zoom.
 */
import { type PlanPoint } from '../base/points.ts';
import { type Primitive } from '../drafting/primitives.ts';

export interface BoardOptions {
  /** Inches of the screen (96 pixels of CSS) for an inch of the plan. */
  readonly scale: number;
  readonly sizes: boolean;
  readonly marks: boolean;
  readonly sights: boolean;
  /** Field that a hand is dragging now: its own size is drawn, others wait. null: none. */
  readonly dragged: string | null;
}

/** Screen inches, y up, with the plan's origin at 0, 0: a plan point stands at `scale` times itself. */
export interface BoardPicture {
  readonly scale: number;
  readonly primitives: readonly Primitive[];
  /** Around everything that is drawn. */
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}

/** How a place in the plan becomes the figure of a field. Lengths in inches, angles in radians. */
export type Drag =
  /** value = offset + factor · (distance of the point from `origin` along the heading `along`) */
  | { readonly kind: 'along'; readonly origin: PlanPoint; readonly along: number; readonly factor: number; readonly offset: number }
  /** value = offset + factor · (distance from `center`) */
  | { readonly kind: 'away'; readonly center: PlanPoint; readonly factor: number; readonly offset: number }
  /** value = offset + factor · (angle round `center` from the heading `from`, counter-clockwise, continuous past half a turn by `near`) */
  | { readonly kind: 'round'; readonly center: PlanPoint; readonly from: number; readonly factor: number; readonly offset: number };

/** Something that a hand may take hold of. */
export interface Handle {
  /** Unique and stable while the field stands: the path, and a number where one field has several. */
  readonly id: string;
  /** The field of the project file: `crowdPen.radius`, `chute.runs[1].angle`, … */
  readonly path: string;
  /** What a person calls it. */
  readonly label: string;
  readonly figure: 'length' | 'angle';
  readonly at: PlanPoint;
  /** Heading in which the hand moves to make the figure greater, radians: the way its arrow points. */
  readonly grows: number;
  readonly drag: Drag;
  /** Inches or radians. */
  readonly value: number;
  readonly least: number;
  readonly greatest: number;
  /** The run that it belongs to. */
  readonly run: string;
}
