/** Pieces of steel. One entry is one physical piece where it stands; alike pieces bear one mark. */
import { type FlatShape } from '../base/flat-shape.ts';
import { type Inches, type Pounds, type Radians } from '../base/quantity.ts';
import { type PlanPoint, type Vec } from '../base/points.ts';
import { type Side } from '../brief/types.ts';

export type PieceKind = 'rail' | 'post' | 'cap' | 'skin' | 'plate' | 'gate' | 'cleat' | 'deck' | 'bumper' | 'bearer' | 'bracket' | 'toe-board' | 'guard' | 'step' | 'form';

/**
 * How an end is cut. Mitre: positive where the long point is on the bend's outside; on a straight piece, which can be turned over, the
 * first mitre counts positive and one at its other end has that sign where its long point is on the same side.
 */
export type EndCut =
  | { readonly kind: 'square' }
  | { readonly kind: 'mitre'; readonly angle: Radians }
  | { readonly kind: 'cope'; readonly postRadius: Inches }
  /** A mitre in the upright plane along a fence, where its slope breaks. */
  | { readonly kind: 'slope-mitre'; readonly angle: Radians }
  /** To a plumb post at 90° less the slope; the obtuse side lies underneath at the lower post and on top at the upper one. */
  | { readonly kind: 'slope-cope'; readonly postRadius: Inches; readonly slope: Radians }
  /** A skin's plumb end between sloping edges. */
  | { readonly kind: 'plumb'; readonly slope: Radians };

export interface Bend {
  /** To the axis (rails) or mid-thickness (skins). */
  readonly radius: Inches;
  readonly angle: Radians;
}

/**
 * Where a piece stands, for drawings. u as in layout `Span`; heights from the ground, on a ramp plumb from the line that its fence
 * follows; `row` counts from 0, the lowest.
 */
export type Place =
  | { readonly kind: 'rail'; readonly row: number; readonly height: Inches; readonly from: Inches; readonly to: Inches }
  | { readonly kind: 'skin'; readonly from: Inches; readonly to: Inches; readonly bottom: Inches; readonly top: Inches }
  | { readonly kind: 'post'; readonly at: PlanPoint; readonly u: Inches }
  /** On the open top of a post, `on` the key of that post's piece; `foot` is its underside, the post's top. */
  | { readonly kind: 'cap'; readonly at: PlanPoint; readonly on: string; readonly foot: Inches }
  | { readonly kind: 'plate'; readonly a: PlanPoint; readonly b: PlanPoint; readonly bottom: Inches; readonly top: Inches }
  /** Of a gate: `gate` is the opening's path, `moves` whether it swings or slides with the leaf. */
  | { readonly kind: 'gate'; readonly gate: string; readonly part: GatePart; readonly moves: boolean; readonly outline: GateOutline }
  /** A plank across a ramp, between two places along its surface: up the slope from the foot, or along the dock from its edge. */
  | { readonly kind: 'deck'; readonly part: 'slope' | 'dock'; readonly from: Inches; readonly to: Inches }
  /** A cleat across a ramp, its lower edge so far up the slope. */
  | { readonly kind: 'cleat'; readonly up: Inches }
  /** Across the truck's end of a dock. */
  | { readonly kind: 'bumper' }
  /** A template of so many steps of a ramp, shown against the lowest of them. */
  | { readonly kind: 'form'; readonly steps: number }
  | CatwalkPlace;

/**
 * A piece of a catwalk. `plan`: its outline from above; heights from the ground. `roll`: its stretch with the deck's parts laid flat side
 * by side from the stretch's beginning, inches along it and, from the deck's edge at the fence, across it. Steps have none.
 */
export interface CatwalkPlace {
  readonly kind: 'catwalk';
  /** `catwalks[0]`. */
  readonly catwalk: string;
  readonly part: CatwalkPart;
  readonly plan: readonly PlanPoint[];
  readonly low: Inches;
  readonly high: Inches;
  /** Its lower edge, plumb over the deck's top; steps and what carries the deck: 0. */
  readonly over: Inches;
  /** Of a piece that slopes, its outline from the open side: x as in `roll`, y the height. Null: what its roll makes between low and high. */
  readonly leaning: readonly Vec[] | null;
  readonly roll: readonly Vec[];
  /** The end of the deck that it stands across; null: it runs along the deck. */
  readonly end: 'start' | 'end' | null;
  /** The flight that it belongs to, and what it looks like from its side: x out from the deck's edge, y from the ground. */
  readonly flight: { readonly at: 'start' | 'end'; readonly side: readonly Vec[] } | null;
}

export type CatwalkPart =
  | 'deck' | 'foot-cleat' | 'bearer' | 'cross' | 'bracket' | 'leg' | 'foot' | 'toe' | 'guard-post' | 'top-rail' | 'mid-rail'
  | 'stringer' | 'tread' | 'step-post' | 'step-rail';

export type GatePart =
  | 'stile' | 'rail' | 'bar' | 'skin' | 'stop' | 'upright' | 'beam' | 'guide' | 'tooth'
  | 'strap' | 'bolt' | 'sleeve' | 'handle' | 'keeper' | 'bracket' | 'gusset' | 'tab' | 'eye';

/**
 * A piece of a gate seen from the front, inches: x along the leaf from its pin (a backstop's from the left face, a tooth's along the
 * outer face), y the height from the ground.
 */
export type GateOutline =
  | { readonly kind: 'bar'; readonly a: GatePoint; readonly b: GatePoint; readonly size: Inches; readonly mitred: boolean }
  | { readonly kind: 'plate'; readonly left: Inches; readonly right: Inches; readonly bottom: Inches; readonly top: Inches; /** Where it is no rectangle. */ readonly corners?: readonly GatePoint[] };

export interface GatePoint {
  readonly x: Inches;
  readonly y: Inches;
}

export type HardwareItem =
  | 'hinge' | 'spring' | 'ring-hinge' | 'ratchet-latch' | 'guide-shoe' | 'rope' | 'pulley' | 'rope-cleat' | 'hold-pin';

/** A part that is bought, for one gate. */
export interface Hardware {
  readonly item: HardwareItem;
  readonly size:
    | { readonly kind: 'barrel'; readonly diameter: Inches; readonly length: Inches }
    | { readonly kind: 'round'; readonly diameter: Inches }
    | { readonly kind: 'clear'; readonly gap: Inches }
    | { readonly kind: 'length'; readonly length: Inches }
    | null;
  readonly quantity: number;
  /** The opening that it belongs to. */
  readonly path: string;
}

export interface Piece {
  /** Unique in the project and stable: kind/run/side/bay/row (a skin's course, from 0, for the row). */
  readonly key: string;
  readonly kind: PieceKind;
  readonly mark: string;
  /** What makes two pieces alike. */
  readonly signature: string;
  /** Section or sheet name. */
  readonly section: string;
  /** Rails: along the axis (long point if coped, and in a gate's frame if mitred). Skins and plates: flat length along the fence. */
  readonly length: Inches;
  /** Coped pieces, and a gate's mitred ones: the short point. */
  readonly lengthShort: Inches | null;
  /** Skins and plates: flat height; rails and posts: null. */
  readonly flatHeight: Inches | null;
  /** A flat part that is no plain rectangle of length by flatHeight: its outline inside that rectangle, holes included. */
  readonly flat?: FlatShape;
  readonly bend: Bend | null;
  readonly weight: Pounds;
  readonly run: string;
  readonly side: Side;
  /** First bay. */
  readonly bay: number;
  /** How many bays it covers; 0 for a post. */
  readonly bays: number;
  /** At its start and its end, as the cattle walk. */
  readonly ends: readonly [EndCut, EndCut];
  readonly place: Place;
}

export interface Parts {
  /** What is bought for the gates. */
  readonly hardware: readonly Hardware[];
  /** In the order of the walk: run, side, bay, kind, row. */
  readonly pieces: readonly Piece[];
  /** The brief's marks with those issued now: signature to mark. */
  readonly marks: Readonly<Record<string, string>>;
}
