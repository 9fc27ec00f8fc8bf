import { figure, length, type Column, type Units } from '../../schedules/column.ts';
import { materialColumns } from '../../schedules/index.ts';
import { type BillRow } from './bill-row.ts';

/** Columns of `materials.csv`; from `pieces` on they are ours, to the right of the contract's. */
export function billColumns(units: Units): readonly Column<BillRow>[] {
  const size = length(units);
  return [
    ...materialColumns<BillRow>(),
    figure('price', 'unit_price', (row) => row.unitPrice),
    size('stock_length', (row) => row.stockLength),
    figure('weight', 'bought_lb', (row) => row.boughtWeight),
    size('stock_width', (row) => row.stockWidth),
  ];
}
