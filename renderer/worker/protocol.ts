/** What the page and its worker say to each other. Plain data, each answer bearing the turn of what it answers. */
import { type BoardOptions, type BoardPicture, type Handle } from '../../core/board/types.ts';
import { type DefaultUsed } from '../../core/brief/index.ts';
import { type Finding } from '../../core/checks/index.ts';
import { type FontSize } from '../../core/drafting/font.ts';
import { type Sheet } from '../../core/drafting/primitives.ts';
import { type PackageKind } from '../../core/package/index.ts';
import { type PieceKind } from '../../core/parts/index.ts';
import { type CutList, type CutListProgress, type SectionJob } from '../../core/shop/cut-list/index.ts';
import { type StakeRow, type Stations } from '../../core/schedules/index.ts';

export type Units = 'in' | 'mm';

export interface ShownFault {
  readonly path: string;
  /** What is wrong, what is allowed. */
  readonly words: string;
}

/** What a design is, as far as a screen follows a moving hand. */
export interface Laid {
  readonly units: Units;
  readonly stations: Stations;
  readonly findings: readonly Finding[];
  /** How many head it takes, in sentences. */
  readonly capacity: readonly string[];
  readonly handles: readonly Handle[];
  readonly picture: BoardPicture | null;
}

export interface LaidAnswer {
  readonly faults: readonly ShownFault[];
  readonly defaults: readonly DefaultUsed[];
  /** null: the project could not be laid out, and `faults` say why. */
  readonly laid: Laid | null;
}

/** A drawing in the list of the set. */
export interface SheetTitle {
  readonly number: string;
  readonly title: string;
  readonly paper: string;
  /** Marks of the pieces that it shows, in the order of the list of pieces. */
  readonly marks: readonly string[];
}

/** A piece of steel, as far as it is spoken of on the plan. */
export interface PieceTitle {
  readonly key: string;
  readonly mark: string;
  readonly kind: PieceKind;
  readonly run: string;
}

export interface TableColumn {
  readonly name: string;
  /** Figures stand at the right of their column. */
  readonly figure: boolean;
  /** Of its figures, where the column's name does not say it. */
  readonly unit: Units | null;
}

/** A schedule as its file holds it: the same columns, the same figures. */
export interface Table {
  readonly id: string;
  readonly title: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly (readonly string[])[];
  /** Column of the piece mark, where it has one. */
  readonly markColumn: number | null;
  /** What is to be read before it: plates that are refused, and why. */
  readonly notes?: readonly string[];
}

/** Of the drawing font. `advances`: of the letters from a blank (32) to a tilde (126), font units. */
export interface LetterSizes extends FontSize {
  readonly advances: readonly number[];
}

/** A drawing, and what of the design a screen needs to draw it and to find its way about on it. */
export interface DrawnSheet {
  readonly sheet: Sheet;
  /** Piece marks by the keys of the pieces. */
  readonly marks: Readonly<Record<string, string>>;
  /** What the size and the place of the drawing font's letters follow from. */
  readonly font: LetterSizes;
}

/** The points to set out, and the drawings that show them. */
export interface Stakes {
  readonly units: Units;
  readonly rows: readonly StakeRow[];
  /** A person's words about the control points; empty where there are none. */
  readonly note: string;
  /** Drawings of the stakeout: their place in the set, and the points that each calls out by name. */
  readonly drawings: readonly { readonly index: number; readonly number: string; readonly title: string; readonly points: readonly string[] }[];
}

/** Questions and their answers. `lay` sets the project that the others are about. */
export interface Questions {
  readonly lay: { readonly ask: { readonly text: string; readonly board: BoardOptions | null }; readonly answer: LaidAnswer };
  readonly sheets: { readonly ask: null; readonly answer: readonly SheetTitle[] };
  readonly sheet: { readonly ask: { readonly index: number }; readonly answer: DrawnSheet };
  /** Every piece of steel, in the order of the walk. */
  readonly pieces: { readonly ask: null; readonly answer: readonly PieceTitle[] };
  /** The marks of a project's pieces, those issued before among them; null where it can't be laid out. Sets nothing. */
  readonly marks: { readonly ask: { readonly text: string }; readonly answer: { readonly marks: Readonly<Record<string, string>> | null } };
  readonly tables: { readonly ask: null; readonly answer: readonly Table[] };
  readonly stakes: { readonly ask: null; readonly answer: Stakes };
  /** Sets the project of an earlier issue, against which the drawings are clouded; null: none. One that is at fault is not taken. */
  readonly since: { readonly ask: { readonly text: string | null }; readonly answer: { readonly faults: readonly ShownFault[] } };
  /** What has to be cut from bars. */
  readonly cutJobs: { readonly ask: null; readonly answer: readonly SectionJob[] };
  /** Hands over the cut list that was planned for these jobs; not taken where the design now has others. */
  readonly cuts: { readonly ask: { readonly jobs: readonly SectionJob[]; readonly list: CutList }; readonly answer: { readonly taken: boolean } };
}

export type Question = keyof Questions;

export type AskMessage = { readonly [Q in Question]: { readonly turn: number; readonly kind: Q; readonly ask: Questions[Q]['ask'] } }[Question];

export type AnswerMessage =
  | { readonly turn: number; readonly ok: true; readonly answer: Questions[Question]['answer'] }
  /** A mistake in the program. */
  | { readonly turn: number; readonly ok: false; readonly message: string };

/** What a worker that plans a cut list is told, and what it tells. */
export interface CutAsk {
  readonly kind: 'cuts';
  readonly jobs: readonly SectionJob[];
}

export type CutTold =
  | { readonly kind: 'progress'; readonly progress: CutListProgress }
  | { readonly kind: 'ended'; readonly list: CutList }
  | { readonly kind: 'broken'; readonly message: string };

/** What a worker that makes a package is told, and what it tells. */
export interface PackageAsk {
  readonly kind: 'package';
  readonly text: string;
  readonly units: Units | null;
  readonly only: readonly PackageKind[] | null;
  /** The project of an earlier issue: what changed since stands in clouds. */
  readonly since?: string;
}

export type PackageTold =
  | { readonly kind: 'faults'; readonly faults: readonly ShownFault[] }
  | { readonly kind: 'made'; readonly path: string; readonly bytes: Uint8Array; readonly done: number; readonly total: number }
  /** All files are made. `marks`: those that the package gives its pieces. */
  | { readonly kind: 'ended'; readonly kinds: readonly PackageKind[]; readonly marks: Readonly<Record<string, string>> }
  | { readonly kind: 'broken'; readonly message: string };
