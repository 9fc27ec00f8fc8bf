import { inches, type Inches } from '../base/quantity.ts';
import { type Brief } from '../brief/types.ts';
import { orderLength } from './bend.ts';

/** Stock length of a section for which the shop names none: 21 ft (project contract). */
const USUAL_STOCK = inches(252);

/** The longest stock of a section. */
export function longestStock(brief: Brief, section: string): Inches {
  return inches(Math.max(...(brief.shop.stock[section] ?? [USUAL_STOCK])));
}

/** What has to be cut from stock for a piece: a rolled one is held by the rolls at both ends. */
export function lengthToCut(brief: Brief, length: number, rolled: boolean): Inches {
  return rolled ? orderLength(length, brief.shop.grip) : inches(length);
}
