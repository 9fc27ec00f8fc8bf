/** Openings as they stand in the plan. Plain data in plan inches. */
import { type PlanPoint } from '../../base/points.ts';
import { type Inches, type Radians } from '../../base/quantity.ts';
import { type AlleyGateBrief, type BackstopBrief, type PenGateBrief, type Side } from '../../brief/types.ts';
import { type Section } from '../../steel/types.ts';

/** The ground that a leaf passes over: its pin, how far its farthest corner reaches, and the directions between which it turns. */
export interface Swing {
  readonly pin: PlanPoint;
  readonly reach: Inches;
  /** Of the leaf when it is shut, counter-clockwise from +x. */
  readonly shut: Radians;
  /** Signed turn from there to where it is open. */
  readonly turn: Radians;
}

interface Stands {
  readonly run: string;
  /** For findings: `openings[0]`; the crowd gate's is `crowdPen`. */
  readonly path: string;
  /** Its middle, on the face (a backstop's on the centerline). */
  readonly at: PlanPoint;
  /** From the mouth, on the centerline; null off the chute. */
  readonly station: Inches | null;
  /** Clear width. */
  readonly width: Inches;
}

/** A way out through a fence. `u` and the rest count along the face from the run's start. */
export interface ManGate extends Stands {
  readonly kind: 'man-gate';
  readonly side: Side;
  readonly u: Inches;
  readonly from: Inches;
  readonly to: Inches;
  /** The opening is a bay of its own. */
  readonly bay: number;
  /** The leaf hangs on the jamb that the cattle pass first, so that one who pushes past shuts it. */
  readonly swing: Swing;
}

/** A latched gate for cattle in a fence. `u` and the rest as a man gate's. */
export interface PenGate extends Stands {
  readonly kind: 'pen-gate';
  readonly side: Side;
  readonly u: Inches;
  readonly from: Inches;
  readonly to: Inches;
  readonly bay: number;
  readonly swings: PenGateBrief['swings'];
  readonly hangs: PenGateBrief['hangs'];
  readonly hingePost: Section;
  readonly swing: Swing;
  /** Whether its open leaf turns cattle off their way. */
  readonly sorts: boolean;
}

/** Position of a post along each face, that post's bay, and its center. */
export type PostPair = Readonly<Record<Side, { readonly u: Inches; readonly bay: number; readonly post: PlanPoint }>>;

/** A latched gate across a run, on the fence of one side. */
export interface AlleyGate extends Stands {
  readonly kind: 'alley-gate';
  readonly side: Side;
  readonly swings: AlleyGateBrief['swings'];
  /** At a run's end the post that stands there. */
  readonly hingePost: Section;
  readonly sides: PostPair;
  readonly swing: Swing;
}

/** A frame across the chute, a post on either side. */
export interface Backstop extends Stands {
  readonly kind: 'backstop';
  readonly held: BackstopBrief['held'];
  readonly station: Inches;
  readonly sides: PostPair;
}

/** Parts a fence between two jambs. */
export type JambedGate = ManGate | PenGate;
/** Has a leaf that swings. */
export type SwingGate = JambedGate | AlleyGate;
export type Opening = SwingGate | Backstop;

/** What a person calls an opening. */
export type OpeningKind = Opening['kind'] | 'sort-gate';
export const openingKind = (one: Opening): OpeningKind => (one.kind === 'pen-gate' && one.sorts ? 'sort-gate' : one.kind);

/** Whether an opening parts its fence between two jambs. */
export const isJambedGate = (one: Opening): one is JambedGate => one.kind === 'man-gate' || one.kind === 'pen-gate';
/** Whether an opening has a leaf that swings. */
export const isSwingGate = (one: Opening): one is SwingGate => one.kind !== 'backstop';

/** The gate that crowds: a solid leaf on the pivot post. Its swing is shut at the entry and turns with the cattle to the exit. */
export interface CrowdGate {
  readonly kind: 'crowd-gate';
  readonly run: 'crowd-pen';
  /** The pivot's side. */
  readonly side: Side;
  readonly path: 'crowdPen';
  readonly at: PlanPoint;
  /** From the pivot post's center to the leaf. */
  readonly from: Inches;
  /** Half the leaf's thickness. */
  readonly half: Inches;
  readonly swing: Swing;
  /**
   * Where the open leaf rests back in the alley: its turn from shut, its angle off the alley's inner face, and the alley width left
   * clear. Null where it finds no place to rest.
   */
  readonly rest: { readonly turn: Radians; readonly angle: Radians; readonly clear: Inches } | null;
  /** Places along the outer face for the ratchet's teeth. */
  readonly teeth: readonly Inches[];
}
