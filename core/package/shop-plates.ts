import { type Brief } from '../brief/index.ts';
import { type Parts } from '../parts/index.ts';
import { type Plate, platesOf } from '../shop/plates/index.ts';

/** What the shop's table cuts. */
export interface ShopPlates {
  readonly plates: readonly Plate[];
}

/** The plates of a design. */
export const shopPlates = (_brief: Brief, parts: Parts): ShopPlates => ({ plates: platesOf(parts.pieces) });
