/** Tables as CSV (RFC 4180): one header row, CRLF, quotes where they are needed. */
import { stringify } from 'csv-stringify/browser/esm/sync';
import { fixedNumber } from './plain-number.ts';

/** Decimals by what the column holds. Units are the package's own (in or mm, lb or kg); angles are degrees. */
const PLACES = { length: 4, area: 4, weight: 4, number: 4, price: 2, angle: 6, integer: 0 } as const;

export type CsvFigure = keyof typeof PLACES;

interface Column<Row, Kind extends string, Value> {
  readonly name: string;
  readonly kind: Kind;
  readonly value: (row: Row) => Value | null | undefined;
}

/** A column: `text` is ours, `user-text` a person's. null and undefined leave the cell empty. */
export type CsvColumn<Row> = Column<Row, CsvFigure, number> | Column<Row, 'text', string> | Column<Row, 'user-text', string>;

/**
 * Writes rows under a header of the columns' names. A person's text that a spreadsheet would run as a formula
 * (first character = + - @, or its full-width form) gets an apostrophe before it; ours and figures stay as they are.
 * Throws on a figure that is not finite, and on a fraction in an integer column, with the column's name.
 */
export function writeCsv<Row>(columns: readonly CsvColumn<Row>[], rows: readonly Row[]): string {
  const options = {
    record_delimiter: 'windows',
    cast: { string: (value: string, cell: { index: number }) => ({ value, escape_formulas: columns[cell.index]?.kind === 'user-text' }) },
  };
  return stringify([columns.map((column) => column.name), ...csvCells(columns, rows)], options);
}

/** The cells of a table as its file holds them, a person's text as the person wrote it. Throws as `writeCsv` does. */
export const csvCells = <Row>(columns: readonly CsvColumn<Row>[], rows: readonly Row[]): readonly (readonly string[])[] =>
  rows.map((row) => columns.map((column) => cellText(column, row)));

function cellText<Row>(column: CsvColumn<Row>, row: Row): string {
  if (column.kind === 'text' || column.kind === 'user-text') return column.value(row) ?? '';
  const value = column.value(row);
  if (value === null || value === undefined) return '';
  if (!Number.isFinite(value) || (column.kind === 'integer' && !Number.isInteger(value))) {
    throw new Error(`${column.name}: not a figure for its column (${column.kind}): ${String(value)}`);
  }
  return fixedNumber(value, PLACES[column.kind]);
}
