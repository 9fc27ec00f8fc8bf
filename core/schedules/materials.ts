import { flatArea } from '../base/flat-curves.ts';
import { MM_PER_INCH, pounds, type Pounds } from '../base/quantity.ts';
import { type Brief } from '../brief/types.ts';
import { type Parts, type Piece, type PieceKind } from '../parts/index.ts';
import { figure, text, userText, type Column } from './column.ts';
import { type HardwareRow } from './hardware.ts';

/** All pieces of one kind from one section or sheet. */
export interface MaterialRow {
  readonly item: PieceKind | 'concrete' | 'premix' | 'weld';
  /** Of concrete: what it is cast for; of welds their kind and size. */
  readonly section: string;
  /** Net of the pieces as trimmed: length of bars, area of sheet; volume of concrete. */
  readonly quantity: number;
  readonly unit: 'ft' | 'm' | 'ft2' | 'm2' | 'yd3' | 'm3' | 'bag';
  readonly weight: Pounds;
  /** No price is known to this version. */
  readonly price: null;
  readonly pieces: number;
}

/** The bill of materials: bars by length, sheet by area, as the project's units buy them. What the saw and the sheet waste is not in it. */
export function materialRows(brief: Brief, parts: Parts): readonly MaterialRow[] {
  const groups = new Map<string, Piece[]>();
  for (const piece of parts.pieces) {
    const key = `${piece.kind} ${piece.section}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [piece]);
    else group.push(piece);
  }
  const metric = brief.units === 'mm';
  const perLength = metric ? MM_PER_INCH / 1000 : 1 / 12;
  return [...groups.values()].map((group) => {
    const { kind, section, flatHeight } = group[0]!;
    const sheet = flatHeight !== null;
    const net = sum(group, (piece) => (piece.flat === undefined ? piece.length * (piece.flatHeight ?? 1) : flatArea(piece.flat)));
    return {
      item: kind,
      section,
      quantity: net * (sheet ? perLength ** 2 : perLength),
      unit: sheet ? (metric ? 'm2' : 'ft2') : metric ? 'm' : 'ft',
      weight: pounds(sum(group, (piece) => piece.weight)),
      price: null,
      pieces: group.length,
    };
  });
}

const sum = (pieces: readonly Piece[], of: (piece: Piece) => number): number => pieces.reduce((total, piece) => total + of(piece), 0);

/** Steel or bought parts. */
export type MaterialLine = MaterialRow | HardwareRow;

/** What a row of the contract's columns holds, whatever it is a row of. */
type MaterialCells = Readonly<Record<'item' | 'section' | 'unit', string>> & Readonly<Record<'quantity', number>> & Readonly<Record<'weight' | 'price' | 'pieces', number | null>>;

/** Columns of `materials.csv`; `pieces` is ours, to the right of the contract's. */
export function materialColumns<Row extends MaterialCells = MaterialLine>(): readonly Column<Row>[] {
  return [
    text('item', (row) => row.item),
    userText('section', (row) => row.section),
    figure('number', 'quantity', (row) => row.quantity),
    text('unit', (row) => row.unit),
    figure('weight', 'weight_lb', (row) => row.weight),
    figure('price', 'price', (row) => row.price),
    figure('integer', 'pieces', (row) => row.pieces),
  ];
}
