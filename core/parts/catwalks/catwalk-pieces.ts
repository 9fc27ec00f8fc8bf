import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Layout } from '../../layout/index.ts';
import { type DraftPiece } from '../draft-piece.ts';
import { deckSteel } from './deck-steel.ts';
import { edgeSteel } from './edge-steel.ts';
import { framesOf } from './frame.ts';
import { keyGroup, makerOf } from './own.ts';
import { stepSteel } from './step-steel.ts';

/**
 * Every piece of every catwalk: deck, bearers, brackets, toe boards, guard and steps. A deck on the ground is its plates alone. `ramps`:
 * the pieces of the ramps, whose planks and cleats have their keys already.
 */
export function catwalkPieces(layout: Layout, ramps: readonly DraftPiece[]): readonly DraftPiece[] {
  const pieces: DraftPiece[] = [];
  const counts = new Map<string, number>();
  for (const { place, kind, run, side, bay } of ramps) {
    if (place.kind !== 'deck' && place.kind !== 'cleat') continue;
    const group = keyGroup(kind, run, side, bay);
    counts.set(group, (counts.get(group) ?? 0) + 1);
  }
  for (const catwalk of layout.catwalks) {
    const make = makerOf(catwalk.path, counts, pieces);
    const frames = framesOf(catwalk, layout.fences);
    frames.forEach((frame, i) => {
      deckSteel(catwalk, frame, make);
      if (catwalk.highest > SAME_LENGTH) edgeSteel(catwalk, frame, i === 0, i === frames.length - 1, make);
    });
    for (const flight of catwalk.flights) stepSteel(catwalk, flight, make);
  }
  return pieces;
}
