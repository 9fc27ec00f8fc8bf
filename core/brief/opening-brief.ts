/** Openings of fences as the brief asks for them. */
import { type Inches } from '../base/quantity.ts';
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

/** What keeps an animal in the chute from backing, and how it is held open. */
export interface BackstopBrief extends Stands {
  readonly kind: 'backstop';
  readonly held: 'rope' | 'pin' | 'none';
}

export type OpeningBrief = ManGateBrief | BackstopBrief;
