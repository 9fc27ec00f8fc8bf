/** The set-out: the path that cattle walk, and the fences beside it with their posts. Plain data in plan inches. */
import { type Curve } from '../base/curve.ts';
import { type Inches, type Radians } from '../base/quantity.ts';
import { type PlanPoint } from '../base/points.ts';
import { type FenceBrief, type HoldingPenBrief, type RampBrief, type Side } from '../brief/types.ts';
import { type RampFigures } from './ramps/figures.ts';
import { type Section } from '../steel/types.ts';
import { type Catwalk } from './catwalks/types.ts';
import { type CrowdGate, type Opening } from './openings/types.ts';

/** One run of the path, in walking order: `alley-1` …, `crowd-pen`, `junction`, `chute-1` …. */
export interface Run {
  readonly name: string;
  readonly kind: 'straight' | 'arc';
  /** Station of its start from the mouth; null off the chute. */
  readonly from: Inches | null;
  /** Along `path`. */
  readonly length: Inches;
  readonly insideRadius: Inches | null;
  readonly centerlineRadius: Inches | null;
  readonly angle: Radians | null;
  readonly hand: Side | null;
  /** Clear width; the crowd pen's is its radius, the junction's that of its mouth. */
  readonly width: Inches;
  /** The centerline; for the crowd pen and the junction their outer face, which the cattle follow. */
  readonly path: Curve<PlanPoint>;
  /** Headings at its start and end, in (-180°, 180°], counter-clockwise from +x: true also where the path has no length. */
  readonly headings: readonly [Radians, Radians];
  /** A fence beside the walk that bears a name of its own: no part of the path. */
  readonly aside?: true;
  /** Cattle side of the fences, in walking direction; null where there is none (the crowd pen's pivot side). */
  readonly faces: Readonly<Record<Side, Curve<PlanPoint> | null>>;
}

/** A fence's section: offsets outward from the face and heights from the ground. */
export interface FenceSection {
  /** Sheet thickness t, counted wherever the fence has a sheet material. */
  readonly t: Inches;
  /** Rail size outward (d) and upright. */
  readonly d: Inches;
  readonly railHeight: Inches;
  /** Post size outward (D). */
  readonly D: Inches;
  /** Rail axis and post center from the face. */
  readonly kr: Inches;
  readonly k: Inches;
  /** Heights of the rail centers, lowest first. */
  readonly rows: readonly Inches[];
}

/** How a span's end meets what is there. */
export type SpanEnd =
  /** In line with the next run's fence: one post serves both; rails end at the post's center. */
  | { readonly kind: 'joint' }
  /** Nothing beyond. */
  | { readonly kind: 'free' }
  /** A jamb of an opening; `post` where a gate hangs on one thicker than the fence's own. */
  | { readonly kind: 'jamb'; readonly post?: Section }
  /** Beside the pivot post: the last post stands u0 short of it and a closing plate joins them. */
  | { readonly kind: 'pivot' }
  /**
   * The corner at the mouth, rows at one height: lapped rails mitred by `mitre` (half the turn) to each other. `toward` is the
   * side, walking, to which the fence turns there: the long point of the cut is on the other side.
   */
  | { readonly kind: 'mitre'; readonly mitre: Radians; readonly toward: Side }
  /** A corner where rows differ in height, or coped rails: each row ends on the corner post. */
  | { readonly kind: 'corner' };

/**
 * A stretch of fence between two stops (run ends, jambs), posts included. Positions `u` are inches along the face from the
 * run's start; on an arc, u / face radius is the angle, so one u serves every offset.
 */
export interface Span {
  readonly start: SpanEnd;
  readonly end: SpanEnd;
  /** One more than the bays. */
  readonly posts: readonly Inches[];
  /** Bay number of the first bay, from 1, counted along the whole fence. */
  readonly firstBay: number;
  /** Where rails' joints stand: the posts, but at a mitre where the two axes meet. Same length as `posts`. */
  readonly railStops: readonly Inches[];
  /** Where the skin starts and ends. */
  readonly skinFrom: Inches;
  readonly skinTo: Inches;
  /** Posts between its ends that are thicker than the fence's own. */
  readonly thick?: readonly { readonly u: Inches; readonly post: Section }[];
}

export interface Fence {
  readonly run: string;
  readonly side: Side;
  readonly brief: FenceBrief;
  readonly section: FenceSection;
  readonly face: Curve<PlanPoint>;
  /** Of the face. */
  readonly length: Inches;
  /** Face radius; null on a straight. */
  readonly faceRadius: Inches | null;
  /** +1 where an outward offset adds to the radius (or on a straight), -1 where it takes from it. */
  readonly radiusSign: 1 | -1;
  /** +1 where outward is to the left of the face's direction, -1 to the right. */
  readonly outward: 1 | -1;
  /** Where in the file its length is said, for faults: `chute.runs[0].length`, … */
  readonly lengthPath: string;
  readonly spans: readonly Span[];
}

export type PostKind = 'post' | 'pivot-post' | 'corner-post' | 'jamb-post';

/** One post as it stands: a shared post appears once, under its downstream run. */
export interface Post {
  readonly kind: PostKind;
  readonly at: PlanPoint;
  readonly section: Section;
  readonly length: Inches;
  readonly fenceHeight: Inches;
  readonly run: string;
  readonly side: Side;
  /** The bay that begins at it; at a fence's last post, bays + 1. */
  readonly bay: number;
  /** Position on its own fence's face; for the pivot post 0. */
  readonly u: Inches;
  readonly hole: { readonly diameter: Inches; readonly depth: Inches };
  /** The fence that it also ends, where it is shared (`bay` is that fence's bays + 1). */
  readonly alsoEnds: { readonly run: string; readonly side: Side; readonly bay: number; readonly u: Inches } | null;
}

/** A 1/4 in closing plate between the pivot post and the first post of a fence, along that fence's face. */
export interface ClosingPlate {
  readonly run: string;
  readonly side: Side;
  readonly bay: number;
  /** Ends on the face line, from the pivot post's surface outward. */
  readonly a: PlanPoint;
  readonly b: PlanPoint;
  readonly thickness: Inches;
  readonly width: Inches;
  readonly from: Inches;
  readonly to: Inches;
}

/**
 * Two things in one place. `at` is where (the first place, in walking order, of those between the same two runs).
 * `measured`: foul-fence, foul-path: the number of places; foul-post: inches by which the posts are too near;
 * post-line-offset: inches between the two post centers; foul-opening: inches by which it lies over a run's end or another opening.
 */
export interface Foul {
  readonly kind: 'foul-fence' | 'foul-path' | 'foul-opening' | 'foul-post' | 'post-line-offset';
  readonly at: PlanPoint;
  readonly measured: number;
  /** In walking order; one name twice where a run fouls itself. */
  readonly runs: readonly string[];
  /** foul-opening: the opening that is left out, and the one that it lies over; null where that is its run's end. */
  readonly openings?: { readonly path: string; readonly other: string | null };
  /** foul-fence: the catwalk that stands in a fence, and the other catwalk where it is one that it stands in. */
  readonly deck?: { readonly path: string; readonly other: string | null };
}

/** A ramp with its dock as it lies. Its fences and posts stand among those of the layout, under its run's name. */
export interface Ramp {
  readonly name: string;
  readonly brief: RampBrief;
  readonly figures: RampFigures;
  /** Middle of the low end. */
  readonly at: PlanPoint;
  /** The way the cattle walk. */
  readonly heading: Radians;
  /** Level, foot to the dock's far end. */
  readonly length: Inches;
  readonly run: Run;
}

/** A holding pen beside the drive alley. */
export interface HoldingPen {
  readonly brief: HoldingPenBrief;
  /** Of the drive alley. */
  readonly side: Side;
  /** Of its clear ground: along the drive alley's fence in walking order, then along the back. */
  readonly corners: readonly [PlanPoint, PlanPoint, PlanPoint, PlanPoint];
  readonly middle: PlanPoint;
  /** Middle of its gate, along the face of its stretch of the drive alley. */
  readonly gateAt: Inches;
}

export interface Layout {
  readonly runs: readonly Run[];
  readonly fences: readonly Fence[];
  readonly posts: readonly Post[];
  readonly closingPlates: readonly ClosingPlate[];
  /** In walking order; their runs, fences and posts stand among the others, last. */
  readonly ramps: readonly Ramp[];
  readonly holdingPens: readonly HoldingPen[];
  /** Those that stand, a holding pen's gate under that pen's path; one that fouls is among the fouls. */
  readonly openings: readonly Opening[];
  /** In the order of the brief. */
  readonly catwalks: readonly Catwalk[];
  readonly crowdGate: CrowdGate;
  /** Corners of the roof over the squeeze pad, in turn; none without one. */
  readonly roof: readonly PlanPoint[];
  readonly pivot: PlanPoint;
  readonly mouth: PlanPoint;
  /** m: how far the mouth lies beyond the pivot's diameter. */
  readonly mouthDistance: Inches;
  readonly funnelLength: Inches;
  /** ω at the pivot post, between the alley's and the funnel's face. */
  readonly pivotWedge: Radians;
  /** u0: how far from the pivot post, along its face, each of the two fences begins. */
  readonly pivotGap: { readonly alley: Inches; readonly funnel: Inches };
  readonly fouls: readonly Foul[];
}
