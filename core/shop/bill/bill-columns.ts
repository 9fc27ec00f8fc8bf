import { figure, length, text, userText, type Column, type Units } from '../../schedules/column.ts';
import { type BillRow } from './bill-rows.ts';

/** Columns of `materials.csv`; from `pieces` on they are ours, to the right of the contract's. */
export function billColumns(units: Units): readonly Column<BillRow>[] {
  const size = length(units);
  return [
    text('item', (row) => row.item),
    userText('section', (row) => row.section),
    figure('number', 'quantity', (row) => row.quantity),
    text('unit', (row) => row.unit),
    figure('weight', 'weight_lb', (row) => row.weight),
    figure('price', 'price', (row) => row.price),
    figure('integer', 'pieces', (row) => row.pieces),
    figure('price', 'unit_price', (row) => row.unitPrice),
    size('stock_length', (row) => row.stockLength),
    figure('weight', 'bought_lb', (row) => row.boughtWeight),
  ];
}
