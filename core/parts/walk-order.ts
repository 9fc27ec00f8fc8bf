import { type Layout } from '../layout/index.ts';
import { type DraftPiece } from './draft-piece.ts';
import { type PieceKind } from './types.ts';

const KIND_ORDER: Readonly<Record<PieceKind, number>> = { rail: 0, post: 1, cap: 2, skin: 3, plate: 4, gate: 5, deck: 6, cleat: 7, bumper: 8, bracket: 9, bearer: 10, 'toe-board': 11, guard: 12, step: 13, form: 14 };

/** Pieces in the order of the walk: run, side (left first), bay, kind, then from the ground up. */
export function walkOrder(layout: Layout, pieces: readonly DraftPiece[]): readonly DraftPiece[] {
  const runs = new Map(layout.runs.map((run, i) => [run.name, i]));
  const runOf = (piece: DraftPiece): number => {
    const place = runs.get(piece.run);
    if (place === undefined) throw new Error(`a piece on a run that is not there: ${piece.run}`);
    return place;
  };
  return pieces.toSorted((a, b) =>
    runOf(a) - runOf(b)
    || Number(a.side === 'right') - Number(b.side === 'right')
    || a.bay - b.bay
    || KIND_ORDER[a.kind] - KIND_ORDER[b.kind]
    || heightOf(a) - heightOf(b));
}

function heightOf({ place }: DraftPiece): number {
  switch (place.kind) {
    case 'rail':
      return place.height;
    case 'skin':
    case 'plate':
      return place.bottom;
    case 'deck':
      return place.from + (place.part === 'dock' ? 1e6 : 0);
    case 'cleat':
      return place.up;
    case 'cap':
      return place.foot;
    case 'post':
    case 'form':
    case 'bumper':
      return 0;
    case 'catwalk':
      return place.low;
    case 'gate':
      return place.outline.kind === 'bar' ? place.outline.a.y : place.outline.bottom;
  }
}
