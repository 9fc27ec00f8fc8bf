import { contourBox, contourCurves, flatArea } from '../../base/flat-curves.ts';
import { curveLength } from '../../base/curve.ts';
import { inches } from '../../base/quantity.ts';
import { type FlatShape } from '../../base/flat-shape.ts';
import { type Piece } from '../../parts/index.ts';
import { parseSheet } from '../../steel/index.ts';
import { markStrokes } from './mark-place.ts';
import { outlineOf } from './outline-of.ts';
import { refusalOf } from './refusal-of.ts';
import { type Plate } from './types.ts';

/** Every flat piece of steel as a plate for the table: one entry a mark, in the order of the walk, those that are refused with their reason. */
export function platesOf(pieces: readonly Piece[]): readonly Plate[] {
  const byMark = new Map<string, { readonly piece: Piece; readonly shape: FlatShape; readonly keys: string[] }>();
  for (const piece of pieces) {
    const known = byMark.get(piece.mark);
    if (known !== undefined) known.keys.push(piece.key);
    else {
      const shape = outlineOf(piece);
      if (shape !== null) byMark.set(piece.mark, { piece, shape, keys: [piece.key] });
    }
  }
  return [...byMark.values()].flatMap(({ piece, shape, keys }) => {
    const sheet = parseSheet(piece.section);
    // A flat part of something else than sheet (a plank) is not for the table.
    return sheet === null ? [] : [plateOf(piece, sheet.thickness, shape, keys)];
  });
}

function plateOf(piece: Piece, thickness: Plate['thickness'], shape: FlatShape, keys: readonly string[]): Plate {
  const refusal = refusalOf(shape);
  const box = contourBox(shape.outer);
  const [width, height] = [inches(box.right), inches(box.high)];
  const contours = [shape.outer, ...shape.holes];
  return {
    mark: piece.mark,
    kind: piece.kind,
    section: piece.section,
    thickness,
    quantity: keys.length,
    shape,
    width,
    height,
    area: flatArea(shape),
    cutLength: inches(contours.flatMap(contourCurves).reduce((sum, curve) => sum + curveLength(curve), 0)),
    pierces: contours.length,
    etch: refusal === null ? markStrokes(piece.mark, shape, width, height) : null,
    bend: piece.bend,
    refusal,
    pieces: keys,
  };
}
