import { inches, pounds } from '../base/quantity.ts';
import { NOISE } from '../base/tolerance.ts';
import { bendAngle } from './bend.ts';
import { type DraftPiece } from './draft-piece.ts';

/** A figure cleared of floating noise: a fraction of an inch comes out as itself. */
const clear = (value: number): number => Math.round(value / NOISE) / Math.round(1 / NOISE);

/** A piece with its figures cleared of floating noise. */
export function clearFigures<P extends DraftPiece>(piece: P): P {
  const length = inches(clear(piece.length));
  const radius = piece.bend === null ? null : inches(clear(piece.bend.radius));
  return {
    ...piece,
    length,
    lengthShort: piece.lengthShort === null ? null : inches(clear(piece.lengthShort)),
    flatHeight: piece.flatHeight === null ? null : inches(clear(piece.flatHeight)),
    bend: radius === null ? null : { radius, angle: bendAngle(radius, length) },
    weight: pounds(clear(piece.weight)),
  };
}

/**
 * One set of figures for alike pieces, which may differ within CUT_STEP: those of the shortest, so that one mark prints one figure
 * everywhere, whatever the order of the walk.
 */
export function figuresOfShortest<P extends DraftPiece>(pieces: readonly P[], signatureOf: (piece: P) => string): readonly P[] {
  const shortest = new Map<string, P>();
  const signatures = pieces.map(signatureOf);
  pieces.forEach((piece, i) => {
    const known = shortest.get(signatures[i]!);
    if (known === undefined || isShorter(piece, known)) shortest.set(signatures[i]!, piece);
  });
  return pieces.map((piece, i) => {
    const { length, lengthShort, flatHeight, bend, weight } = shortest.get(signatures[i]!)!;
    return { ...piece, length, lengthShort, flatHeight, bend, weight };
  });
}

function isShorter(a: DraftPiece, b: DraftPiece): boolean {
  const figures = (p: DraftPiece): readonly number[] => [p.length, p.lengthShort ?? 0, p.flatHeight ?? 0, p.bend?.radius ?? 0, p.weight];
  const [first, second] = [figures(a), figures(b)];
  const differs = first.findIndex((value, i) => value !== second[i]);
  return differs >= 0 && first[differs]! < second[differs]!;
}
