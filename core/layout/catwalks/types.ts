/** Catwalks as they stand in the plan. Plain data in plan inches; heights from the ground. */
import { type PlanPoint } from '../../base/points.ts';
import { type Inches, type Radians } from '../../base/quantity.ts';
import { type CatwalkBrief, type Side } from '../../brief/types.ts';

/** One trapezoid of a deck. */
export interface DeckPart {
  /** Along the fence's face, from the run's start. */
  readonly from: Inches;
  readonly to: Inches;
  /** Of the fence, in which its middle lies. */
  readonly bay: number;
  /** That it turns through; 0 beside a straight fence. */
  readonly angle: Radians;
  /** Half of that, at each end. */
  readonly mitre: Radians;
  /** Its edge at the fence and its open edge, as they are cut: on a slope along it. */
  readonly near: Inches;
  readonly far: Inches;
  /** Positive where it rises as the cattle walk; 0 but beside a ramp's slope. */
  readonly slope: Radians;
  /** Of its top over the ground, at its start and at its end. */
  readonly heights: readonly [Inches, Inches];
  /** On the plan: fence side at its start and at its end, open side at its end and at its start. */
  readonly corners: readonly [PlanPoint, PlanPoint, PlanPoint, PlanPoint];
  /** The end of the catwalk at which it is the landing of the steps; null: of none. */
  readonly landing: DeckEnd | null;
}

export type DeckEnd = 'start' | 'end';

/** A fence post that carries the deck. */
export interface DeckPost {
  readonly u: Inches;
  readonly bay: number;
  /** From the back of the post to the deck's open edge, square to the fence. */
  readonly reach: Inches;
  /** Back of the post, and the place on the open edge behind it. */
  readonly back: PlanPoint;
  readonly tip: PlanPoint;
  /** Of the deck's top over the ground, and the steeper slope of those that meet here. */
  readonly height: Inches;
  readonly slope: Radians;
}

/** A place where parts meet or the deck ends and no post stands. */
export interface DeckJoint {
  readonly u: Inches;
  readonly bay: number;
  readonly kind: 'between' | DeckEnd;
  readonly near: PlanPoint;
  readonly far: PlanPoint;
  /** Of the deck's top over the ground, and its slope. */
  readonly height: Inches;
  readonly slope: Radians;
}

/** A catwalk along one run. */
export interface DeckStretch {
  readonly run: string;
  readonly side: Side;
  readonly from: Inches;
  readonly to: Inches;
  /** Radius to the post backs; null beside a straight fence. */
  readonly backRadius: Inches | null;
  readonly parts: readonly DeckPart[];
  readonly posts: readonly DeckPost[];
  readonly joints: readonly DeckJoint[];
}

/** Steps from the ground to the open edge of a landing, square to it; where a deck ends on a slope, in line with it to its end. */
export interface StepFlight {
  readonly at: DeckEnd;
  readonly inLine: boolean;
  /** Of the deck at its top, over the ground. */
  readonly height: Inches;
  readonly run: string;
  readonly side: Side;
  readonly bay: number;
  readonly risers: number;
  readonly riser: Inches;
  readonly tread: Inches;
  /** Level, from the lowest riser to the deck's edge; 0 for a single riser. */
  readonly length: Inches;
  readonly angle: Radians;
  readonly width: Inches;
  /** Middle of its upper end on the deck's edge, and the way down. */
  readonly top: PlanPoint;
  readonly heading: Radians;
  /** On the plan; its first two corners on the deck's edge. */
  readonly corners: readonly [PlanPoint, PlanPoint, PlanPoint, PlanPoint];
}

export interface Catwalk {
  readonly path: string;
  readonly brief: CatwalkBrief;
  readonly side: Side;
  /** Of the deck and of the fence beside it, plumb over the line that both follow: the ground, beside a ramp its surface or nosings. */
  readonly deckHeight: Inches;
  readonly fenceHeight: Inches;
  /** Of the deck over the ground: its highest place and its lowest. */
  readonly highest: Inches;
  readonly lowest: Inches;
  /** The steepest of its parts; 0 where it is level throughout. */
  readonly slope: Radians;
  /** Whether its open edges have a guard, and the height of that over the deck. */
  readonly guarded: boolean;
  readonly guardHeight: Inches;
  /** In walking order. */
  readonly stretches: readonly DeckStretch[];
  readonly flights: readonly StepFlight[];
}
