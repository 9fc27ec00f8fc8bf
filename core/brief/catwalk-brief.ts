/** Catwalks as the brief asks for them: a deck beside a fence, to work cattle from. */
import { type Inches } from '../base/quantity.ts';
import { type Side } from './side.ts';

export interface CatwalkBrief {
  /** `chute`, where `from` and `to` are stations from the mouth; else the one run along whose face they count from its start. */
  readonly run: string;
  readonly side: Side;
  readonly from: Inches;
  /** null: to the run's end. */
  readonly to: Inches | null;
  /** Of the deck. */
  readonly width: Inches;
  /** Over the ground; null: the fence's height less that of a rail. */
  readonly deckHeight: Inches | null;
  /** Where in the file it stands, for faults and findings: `catwalks[0]`. */
  readonly path: string;
}
