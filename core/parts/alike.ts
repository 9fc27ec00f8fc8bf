import { inches, pounds } from '../base/quantity.ts';
import { NOISE } from '../base/tolerance.ts';
import { bendAngle } from './bend.ts';
import { type DraftPiece } from './draft-piece.ts';

/** The figures of a piece that are printed. */
export type Figures = Pick<DraftPiece, 'length' | 'lengthShort' | 'flatHeight' | 'bend' | 'weight'>;

const PER_UNIT = Math.round(1 / NOISE);
const clear = (value: number): number => Math.round(value * PER_UNIT) / PER_UNIT;

/** A piece's figures cleared of floating noise: a fraction of an inch comes out as itself. */
export function clearFigures(piece: DraftPiece): Figures {
  const length = inches(clear(piece.length));
  const radius = piece.bend === null ? null : inches(clear(piece.bend.radius));
  return {
    length,
    lengthShort: piece.lengthShort === null ? null : inches(clear(piece.lengthShort)),
    flatHeight: piece.flatHeight === null ? null : inches(clear(piece.flatHeight)),
    bend: radius === null ? null : { radius, angle: bendAngle(radius, length) },
    weight: pounds(clear(piece.weight)),
  };
}

/**
 * One set of figures for alike pieces, which may differ within CUT_STEP: those of the shortest, so that one mark prints one figure
 * everywhere, whatever the order of the walk. `figures` and `signatures` go piece by piece.
 */
export function figuresOfShortest(figures: readonly Figures[], signatures: readonly string[]): ReadonlyMap<string, Figures> {
  const shortest = new Map<string, Figures>();
  figures.forEach((own, i) => {
    const signature = signatures[i]!;
    const known = shortest.get(signature);
    if (known === undefined || compare(own, known) < 0) shortest.set(signature, own);
  });
  return shortest;
}

function compare(a: Figures, b: Figures): number {
  return (
    a.length - b.length
    || (a.lengthShort ?? 0) - (b.lengthShort ?? 0)
    || (a.flatHeight ?? 0) - (b.flatHeight ?? 0)
    || (a.bend?.radius ?? 0) - (b.bend?.radius ?? 0)
    || a.weight - b.weight
  );
}
