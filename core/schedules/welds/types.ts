import { type WeldSymbol } from '../../base/weld-symbol.ts';
import { type Inches } from '../../base/quantity.ts';

/** What is joined. */
export type WeldJoint =
  | 'rail-lapped' | 'rail-coped' | 'rail-splice' | 'rail-mitre' | 'skin-rail' | 'skin-seam' | 'plate-post' | 'plate-rail'
  | 'frame-corner' | 'frame-splice' | 'bar-frame' | 'gate-skin' | 'hinge-leaf' | 'hinge-jamb' | 'ring-leaf' | 'stop-jamb' | 'tooth-rail'
  | 'upright-post' | 'beam-upright' | 'guide-end' | 'spring-eye'
  | 'deck-bearer' | 'bearer-joint' | 'bearer-cross' | 'bearer-bracket' | 'bracket-post' | 'leg-end' | 'toe-deck' | 'cleat-deck' | 'guard-post' | 'guard-mitre' | 'guard-rail'
  | 'stringer-deck' | 'tread-stringer' | 'step-rail'
  | 'latch-leaf' | 'latch-jamb' | 'cap-post' | 'gusset-frame' | 'tab-post';

/** How a joint is welded: its symbol and the thickness of the thinner part. */
export interface Weld {
  readonly joint: WeldJoint;
  readonly symbol: WeldSymbol;
  readonly thinner: Inches;
}

/** Welds of one kind in one run. */
export interface WeldLot {
  readonly weld: Weld;
  readonly run: string;
  readonly count: number;
  /** Of all of them together, as laid: inches, and cubic inches of weld metal. */
  readonly length: number;
  readonly volume: number;
}
