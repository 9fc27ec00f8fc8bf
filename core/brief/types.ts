/** The brief as the rest of the core reads it: every default filled, lengths in inches, angles in radians, sections looked up. */
import { type Inches, type Pounds, type Radians } from '../base/quantity.ts';
import { type PlanPoint } from '../base/points.ts';
import { type Section, type Sheet } from '../steel/types.ts';
import { type CatwalkBrief } from './catwalk-brief.ts';
import { type OpeningBrief } from './opening-brief.ts';
import { type HoldingPenBrief, type ReturnAlleyBrief } from './holding-brief.ts';
import { type RunBrief } from './run-brief.ts';
import { type Side } from './side.ts';
import { type FloorsBrief, type SortPenBrief, type SqueezePadBrief } from './yard-brief.ts';

export { otherSide, type Side } from './side.ts';
export type { CatwalkBrief } from './catwalk-brief.ts';
export type { RunBrief } from './run-brief.ts';
export { isJambed, type AlleyGateBrief, type BackstopBrief, type JambedBrief, type ManGateBrief, type OpeningBrief, type PenGateBrief } from './opening-brief.ts';
export { HOLDING_AREA, type HoldingPenBrief, type ReturnAlleyBrief } from './holding-brief.ts';
export type { FloorsBrief, RoofBrief, RoofSide, SortPenBrief, SqueezePadBrief } from './yard-brief.ts';

/** What a person got wrong in the file. `path` like `chute.runs[1].angle`; `code` keys the strings table. */
export interface Fault {
  readonly path: string;
  readonly code: `fault.${string}`;
  readonly params: Readonly<Record<string, string | number>>;
}

/** A default that the file left to us, for the report: its path and its figure as a person reads it. */
export interface DefaultUsed {
  readonly path: string;
  readonly value: string;
}

export type Construction = 'lapped' | 'coped';

/** One fence's settings, complete. */
export interface FenceBrief {
  readonly height: Inches;
  readonly solidFrom: Inches;
  /** 0: an open fence. */
  readonly solidTo: Inches;
  readonly construction: Construction;
  /** Number of rows. */
  readonly rails: number;
  /** Height of the lowest row's center, before any row moves to `solidTo`. */
  readonly bottomRail: Inches;
  readonly rail: Section;
  readonly post: Section;
  readonly postSpacing: Inches;
  /** The field of the file that says it: this fence's own, or one of a fence around it. */
  readonly postSpacingPath: string;
  /** null: no sheet material. */
  readonly sheet: Sheet | null;
  /** Where in the file these settings are said, for faults: `fences.chute.left`, … */
  readonly path: string;
}

/** Fences of this version's parts; a later part adds its own. */
export interface FencesBrief {
  readonly crowdPen: FenceBrief;
  readonly alley: Readonly<Record<Side, FenceBrief>>;
  readonly junction: Readonly<Record<Side, FenceBrief>>;
  readonly chute: Readonly<Record<Side, FenceBrief>>;
  readonly ramp: Readonly<Record<Side, FenceBrief>>;
  readonly pad: Readonly<Record<Side, FenceBrief>>;
  readonly pens: Readonly<Record<Side, FenceBrief>>;
}

export interface RollLimit {
  readonly radius: Inches;
  readonly length: Inches;
}

/** Bars of one length that stand on the rack. */
export interface RackBars {
  readonly length: Inches;
  readonly count: number;
  /** Of one; null: none was said. */
  readonly price: number | null;
}

export interface ShopBrief {
  /** Stock lengths by section name, ascending; a section without an entry has 252 in (21 ft). */
  readonly stock: Readonly<Record<string, readonly Inches[]>>;
  readonly sheets: readonly (readonly [Inches, Inches])[];
  /** Bars at hand by section name, longest first. */
  readonly rack: Readonly<Record<string, readonly RackBars[]>>;
  readonly kerf: Inches;
  /** Cut off the rough end of a bar before its first piece. */
  readonly trim: Inches;
  /** What is left of a bar is kept where it is at least so long. */
  readonly keepDrop: Inches;
  readonly weldGap: Inches;
  readonly grip: Inches;
  /** A ratio, 0 to 0.3. */
  readonly springback: number;
  readonly gaugeChord: Inches;
  readonly plateKerf: Inches;
  readonly coating: 'paint' | 'galvanized' | 'bare';
  readonly roll: Readonly<Record<string, RollLimit>>;
  /** By the name of a row of the bill; of one of its unit. `SECTION=LENGTH`: of one bar. */
  readonly prices: Readonly<Record<string, number>>;
  readonly welds: WeldsBrief;
  readonly truck: TruckBrief;
  /** What one person lifts. */
  readonly handLift: Pounds;
}

/** How the shop welds: the least fillet it lays, the stitches of a skin and their pitch, how much of the filler ends up in the weld. */
export interface WeldsBrief {
  readonly fillet: Inches;
  readonly skinLength: Inches;
  readonly skinPitch: Inches;
  readonly efficiency: number;
}

/** The bed that panels travel on, and what it carries. */
export interface TruckBrief {
  readonly length: Inches;
  readonly width: Inches;
  readonly load: Pounds;
}

/** A loading or unloading ramp with its dock. */
export interface RampBrief {
  /** Its run: `load-1` …, `unload-1` …. */
  readonly name: string;
  readonly kind: 'load' | 'unload';
  readonly dockHeight: Inches;
  /** Clear width. */
  readonly width: Inches;
  /** Of the level dock. */
  readonly dockLength: Inches;
  readonly surface:
    | { readonly kind: 'stepped'; readonly tread: Inches }
    | { readonly kind: 'cleated'; readonly slope: Radians; readonly cleat: Inches };
  /** Middle of the low end; null: clear of everything else. */
  readonly at: PlanPoint | null;
  /** The way the cattle walk, counter-clockwise from +x; null: with its dock toward +y. */
  readonly heading: Radians | null;
  /** Where in the file it is said: `ramps[0]`. */
  readonly path: string;
}

export interface Brief {
  readonly title: string;
  readonly client: string;
  readonly units: 'in' | 'mm';
  readonly paper: string;
  readonly revision: { readonly letter: string; readonly date: string; readonly note: string };
  /** Issues before this one, oldest first. */
  readonly revisions: readonly { readonly letter: string; readonly date: string; readonly note: string }[];
  readonly site: {
    readonly latitude: number | null;
    readonly longitude: number | null;
    readonly timeZone: string | null;
    /** True bearing of +y, radians clockwise from north. */
    readonly bearing: Radians | null;
    readonly soil: 'clay' | 'sand' | 'gravel' | number | null;
    readonly volume: 'ranch' | 'feedlot' | 'auction' | null;
    readonly jurisdiction: 'us' | 'eu' | 'uk' | 'ontario' | null;
    readonly tenure: 'owned' | 'leased' | null;
    /** Working hours as minutes from midnight; months 1 to 12. */
    readonly work: { readonly from: number; readonly to: number; readonly months: readonly number[] } | null;
  };
  readonly cattle: {
    readonly weight: Pounds;
    readonly kind: 'calf' | 'yearling' | 'mature';
    readonly flighty: boolean;
    readonly horned: boolean;
    readonly bodyLength: Inches;
    readonly eyeHeight: Inches;
    readonly headPerDay: number;
  };
  readonly alley: { readonly runs: readonly RunBrief[] };
  readonly crowdPen: {
    readonly radius: Inches;
    readonly sweep: Radians;
    readonly hand: Side;
    readonly funnelAngle: Radians;
    readonly gateClearance: Inches;
    readonly pivotPost: Section;
    /** Set length of the pivot post, else fence height + footing depth. */
    readonly pivotLength: Inches | null;
  };
  readonly chute: { readonly width: Inches; readonly runs: readonly RunBrief[] };
  readonly fences: FencesBrief;
  /** In the order of the walk. */
  readonly ramps: readonly RampBrief[];
  readonly footings: { readonly diameter: Inches; readonly depth: Inches };
  /** What a person says pushes on one post, how high, and whether a slab or pavement holds the post at the surface; null: no load was given. */
  readonly postLoad: { readonly load: Pounds; readonly height: Inches; readonly heldAtSurface: boolean } | null;
  readonly floors: FloorsBrief;
  /** null: none. */
  readonly squeezePad: SqueezePadBrief | null;
  /** In the order of the walk. */
  readonly holdingPens: readonly HoldingPenBrief[];
  /** null: none. */
  readonly returnAlley: ReturnAlleyBrief | null;
  /** In the order of the walk. */
  readonly sortPens: readonly SortPenBrief[];
  readonly shop: ShopBrief;
  readonly control: { readonly b: PlanPoint; readonly c: PlanPoint | null; readonly note: string };
  /** Piece marks already issued: signature to mark. */
  readonly marks: Readonly<Record<string, string>>;
  readonly openings: readonly OpeningBrief[];
  readonly catwalks: readonly CatwalkBrief[];
}
