/** Openings of fences as the brief asks for them. */
import { type Inches } from '../base/quantity.ts';
import { type Section } from '../steel/types.ts';
import { type Side } from './side.ts';

interface Stands {
  /** `chute` where `at` is a station from the mouth; else the one run along whose face `at` counts from its start. */
  readonly run: string;
  /** Its middle. */
  readonly at: Inches;
  /** Where in the file it stands, for faults and findings: `openings[0]`. */
  readonly path: string;
}

/** A way through a fence for a person: `width` clear between the jambs, on the face. */
export interface ManGateBrief extends Stands {
  readonly kind: 'man-gate';
  readonly side: Side;
  readonly width: Inches;
}

/** A latched gate in a side fence, for cattle to go through: `width` clear between the jambs, on the face. */
export interface PenGateBrief extends Stands {
  readonly kind: 'pen-gate';
  readonly side: Side;
  readonly width: Inches;
  /** Toward the cattle of its run, or away from them. */
  readonly swings: 'in' | 'out';
  /** The jamb that it hangs on: the one that the cattle of its run pass first, or last. */
  readonly hangs: 'first' | 'last';
  /** A post of its own on the hinge side; null: as thick as the fence's. */
  readonly hingePost: Section | null;
  /** A sort gate: its open leaf stands across the run and turns the cattle into the pen beside it. */
  readonly sorts?: true;
}

/** A latched gate across a run, from one fence to the other. */
export interface AlleyGateBrief extends Stands {
  readonly kind: 'alley-gate';
  /** The fence that it hangs on. */
  readonly side: Side;
  /** Clear, of its run. */
  readonly width: Inches;
  /** As the cattle walk, or against them. */
  readonly swings: 'forward' | 'back';
  /** As a pen gate's. */
  readonly hingePost: Section | null;
}

/** What keeps an animal in the chute from backing, and how it is held open. */
export interface BackstopBrief extends Stands {
  readonly kind: 'backstop';
  readonly held: 'rope' | 'pin' | 'none';
}

/** Parts a fence between two jambs. */
export type JambedBrief = ManGateBrief | PenGateBrief;
export type OpeningBrief = JambedBrief | AlleyGateBrief | BackstopBrief;

/** Whether an opening parts its fence between two jambs; the others set a post on either side. */
export const isJambed = (opening: OpeningBrief): opening is JambedBrief => opening.kind === 'man-gate' || opening.kind === 'pen-gate';
