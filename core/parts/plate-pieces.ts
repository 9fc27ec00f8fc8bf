import { inches, pounds } from '../base/quantity.ts';
import { parseSheet, STEEL_DENSITY } from '../steel/index.ts';
import { type Layout } from '../layout/index.ts';
import { pieceKey, type DraftPiece } from './draft-piece.ts';

/** The name under which the closing plates' thickness is bought. */
const PLATE = '1/4';

/** The closing plates beside the pivot post. */
export function platePieces(layout: Layout): readonly DraftPiece[] {
  return layout.closingPlates.map((plate) => {
    const height = plate.to - plate.from;
    const weightPerArea = parseSheet(PLATE)?.weightPerArea ?? plate.thickness * STEEL_DENSITY;
    return {
      key: pieceKey('plate', plate.run, plate.side, plate.bay, 0),
      kind: 'plate',
      section: PLATE,
      length: plate.width,
      lengthShort: null,
      flatHeight: inches(height),
      bend: null,
      weight: pounds(weightPerArea * plate.width * height),
      run: plate.run,
      side: plate.side,
      bay: plate.bay,
      bays: 1,
      ends: [{ kind: 'square' }, { kind: 'square' }],
      place: { kind: 'plate', a: plate.a, b: plate.b, bottom: plate.from, top: plate.to },
    };
  });
}
