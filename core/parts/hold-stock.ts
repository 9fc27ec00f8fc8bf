import { type Brief } from '../brief/types.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';
import { type FaultList } from './faults.ts';
import { isBar, isRolled, lengthToCut, longestStock } from './stock.ts';
import { type Piece } from './types.ts';

/** Every bar against the longest stock of its section: one that no bar holds is told by its mark, the first of a section. */
export function holdStock(brief: Brief, pieces: readonly Piece[], faults: FaultList): void {
  const longest = new Map<string, number>();
  for (const piece of pieces) {
    if (!isBar(piece)) continue;
    const stock = longest.get(piece.section) ?? longestStock(brief, piece.section);
    longest.set(piece.section, stock);
    const length = lengthToCut(brief, piece.length, isRolled(piece));
    if (length > stock + SAME_LENGTH) faults.pieceOverStock(piece, length, stock);
  }
}
