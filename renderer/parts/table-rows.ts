/** Rows of a schedule as a person wants them: those with some words in them, by one of their columns. */
import { type Table } from '../worker/protocol.ts';

export interface Sorting {
  readonly column: number;
  readonly down: boolean;
}

type Row = readonly string[];

/** Rows that hold every word of `words` in some cell, whatever their capitals. */
export function rowsWith(rows: readonly Row[], words: string): readonly Row[] {
  const wanted = words.toLowerCase().split(/\s+/).filter((word) => word !== '');
  if (wanted.length === 0) return rows;
  return rows.filter((row) => {
    const cells = row.map((cell) => cell.toLowerCase());
    return wanted.every((word) => cells.some((cell) => cell.includes(word)));
  });
}

/** The figure in a cell. */
export type FigureOf = (row: Row, column: number) => number;
const inTheCell: FigureOf = (row, column) => Number(row[column]);

/** Rows by a column: figures as figures, words with the numbers in them as numbers, so that R2 comes before R10; empty cells last. */
export function rowsBy(rows: readonly Row[], columns: Table['columns'], sorting: Sorting | null, figureOf: FigureOf = inTheCell): readonly Row[] {
  if (sorting === null) return rows;
  const { column, down } = sorting;
  const figure = columns[column]?.figure ?? false;
  const compare = (a: Row, b: Row): number => (figure ? figureOf(a, column) - figureOf(b, column) : inNature(a[column] ?? '', b[column] ?? ''));
  return [...rows].sort((left, right) => {
    const a = left[column] ?? '';
    const b = right[column] ?? '';
    if (a === '' || b === '') return Number(a === '') - Number(b === '');
    return down ? compare(right, left) : compare(left, right);
  });
}

function inNature(a: string, b: string): number {
  const left = a.match(/\d+|\D+/g) ?? [];
  const right = b.match(/\d+|\D+/g) ?? [];
  for (const [index, part] of left.entries()) {
    const other = right[index];
    if (other === undefined) return 1;
    const both = /^\d/.test(part) && /^\d/.test(other);
    const order = both ? Number(part) - Number(other) : part < other ? -1 : part > other ? 1 : 0;
    if (order !== 0) return order;
  }
  return left.length - right.length;
}

/** Which of many rows of one height stand in a pane that is scrolled to `top`, with some to spare on both sides. */
export function rowsInSight(count: number, top: number, paneHeight: number, rowHeight: number): { readonly from: number; readonly to: number } {
  const spare = 10;
  const from = Math.max(0, Math.min(Math.floor(top / rowHeight) - spare, count - 1));
  return { from, to: Math.min(count, Math.ceil((top + paneHeight) / rowHeight) + spare) };
}

/** Characters of the widest cell of each column, its heading counted. */
export const columnWidths = (table: Table): readonly number[] =>
  table.columns.map((column, index) => table.rows.reduce((widest, row) => Math.max(widest, row[index]?.length ?? 0), column.name.length));
