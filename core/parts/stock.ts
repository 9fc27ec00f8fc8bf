import { inches, type Inches } from '../base/quantity.ts';
import { type Brief } from '../brief/types.ts';
import { orderLength } from './bend.ts';
import { type StockSheets } from './skin-courses.ts';
import { type Piece } from './types.ts';

/** Stock length of a section for which the shop names none: 21 ft (project contract). */
const USUAL_STOCK = inches(252);

/** The lengths that a section can be bought in, ascending. */
export const stockLengths = (brief: Brief, section: string): readonly Inches[] => brief.shop.stock[section] ?? [USUAL_STOCK];

/** The most that can be cut from the longest stock of a section, its rough end trimmed. */
export function longestStock(brief: Brief, section: string): Inches {
  return inches(Math.max(...stockLengths(brief, section)) - brief.shop.trim);
}

/** A piece that is cut from a bar and not from sheet. */
export const isBar = (piece: Pick<Piece, 'flatHeight'>): boolean => piece.flatHeight === null;

/** A bar that goes through the rolls; a skin is sheet, bent round the rails as it is hung. */
export const isRolled = (piece: Pick<Piece, 'flatHeight' | 'bend'>): boolean => isBar(piece) && piece.bend !== null;

/** What has to be cut from stock for a piece: a rolled one is held by the rolls at both ends. */
export function lengthToCut(brief: Brief, length: number, rolled: boolean): Inches {
  return rolled ? orderLength(length, brief.shop.grip) : inches(length);
}

/** What plates are cut from where a shop whose fences are all open names no sheet (project contract's own). */
export const USUAL_SHEETS: StockSheets = [[inches(48), inches(120)], [inches(60), inches(120)]];

/** The stock sheets that a shop buys. */
export const stockSheets = (brief: Brief): StockSheets => (brief.shop.sheets.length === 0 ? USUAL_SHEETS : brief.shop.sheets);
