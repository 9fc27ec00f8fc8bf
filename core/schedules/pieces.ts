import { toDegrees, type Inches, type Pounds } from '../base/quantity.ts';
import { type Side } from '../brief/types.ts';
import { type Bend, type Parts, type Piece, type PieceKind } from '../parts/index.ts';
import { figure, length, text, userText, type Column, type Units } from './column.ts';

/** Alike pieces that start in one bay of one fence. */
export interface PieceRow {
  readonly mark: string;
  readonly kind: PieceKind;
  readonly quantity: number;
  readonly section: string;
  readonly length: Inches;
  readonly lengthShort: Inches | null;
  readonly bend: Bend | null;
  /** Of one, as trimmed. */
  readonly weight: Pounds;
  readonly run: string;
  readonly side: Side;
  readonly bay: number;
  /** Skins and plates: flat height. */
  readonly flatHeight: Inches | null;
}

/** The piece list: one row for each mark, run, side and first bay, in the order of the walk. */
export function pieceRows(parts: Parts): readonly PieceRow[] {
  const groups = new Map<string, Piece[]>();
  for (const piece of parts.pieces) {
    const key = [piece.mark, piece.run, piece.side, piece.bay].join(' ');
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [piece]);
    else group.push(piece);
  }
  return [...groups.values()].map((group) => {
    const { mark, kind, section, length: along, lengthShort, bend, weight, run, side, bay, flatHeight } = group[0]!;
    return { mark, kind, quantity: group.length, section, length: along, lengthShort, bend, weight, run, side, bay, flatHeight };
  });
}

/** Columns of `pieces.csv`; `height` is ours, to the right of the contract's. */
export function pieceColumns(units: Units): readonly Column<PieceRow>[] {
  const size = length(units);
  return [
    text('mark', (row) => row.mark),
    text('kind', (row) => row.kind),
    figure('integer', 'quantity', (row) => row.quantity),
    userText('section', (row) => row.section),
    size('length', (row) => row.length),
    size('length_short', (row) => row.lengthShort),
    size('bend_radius', (row) => row.bend?.radius ?? null),
    figure('angle', 'bend_angle_deg', (row) => (row.bend === null ? null : toDegrees(row.bend.angle))),
    figure('weight', 'weight_lb', (row) => row.weight),
    text('run', (row) => row.run),
    text('side', (row) => row.side),
    figure('integer', 'bay', (row) => row.bay),
    size('height', (row) => row.flatHeight),
  ];
}
