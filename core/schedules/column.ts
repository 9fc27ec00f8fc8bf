/** Columns of a schedule: the contract's names, in its order. */
import { MM_PER_INCH } from '../base/quantity.ts';

/** What a figure is, which sets its decimals where it is written. `angle`: degrees; `weight`: pounds; `length`: the units asked for. */
export type ColumnFigure = 'length' | 'weight' | 'angle' | 'number' | 'price' | 'integer';

/** `text` is a word of ours or of the contract, `user-text` a person's. null leaves the cell empty. */
export type Column<Row> =
  | { readonly name: string; readonly kind: ColumnFigure; readonly value: (row: Row) => number | null }
  | { readonly name: string; readonly kind: 'text' | 'user-text'; readonly value: (row: Row) => string | null };

export type Units = 'in' | 'mm';

export const text = <Row>(name: string, value: (row: Row) => string | null): Column<Row> => ({ name, kind: 'text', value });
export const userText = <Row>(name: string, value: (row: Row) => string | null): Column<Row> => ({ name, kind: 'user-text', value });
export const figure = <Row>(kind: ColumnFigure, name: string, value: (row: Row) => number | null): Column<Row> => ({ name, kind, value });

/** A column of lengths: inches in the row, inches or millimeters in the cell. */
export const length = (units: Units) => <Row>(name: string, value: (row: Row) => number | null): Column<Row> => {
  const per = units === 'mm' ? MM_PER_INCH : 1;
  return figure('length', name, (row) => {
    const inches = value(row);
    return inches === null ? null : inches * per;
  });
};
