import { type Inches } from '../../base/quantity.ts';
import { figure, length, userText, type Column, type Units } from '../../schedules/column.ts';
import { fromSteps } from './steps.ts';
import { type CutPlan } from './types.ts';

/** One cut of one bar. */
export interface CutRow {
  readonly section: string;
  readonly stock: Inches;
  /** Bars count from 1 in a section, cuts from 1 on a bar. */
  readonly bar: number;
  readonly cut: number;
  readonly mark: string;
  readonly length: Inches;
  /** What the saw takes after the piece. */
  readonly kerf: Inches;
  /** What is left of the bar, on its last row. */
  readonly drop: Inches | null;
}

/** The cut list of a section. */
export const cutRows = (section: string, plan: CutPlan): readonly CutRow[] =>
  plan.bars.flatMap((bar, index) =>
    bar.cuts.map((cut, at) => ({
      section,
      stock: fromSteps(bar.stock),
      bar: index + 1,
      cut: at + 1,
      mark: cut.mark,
      length: fromSteps(cut.length),
      kerf: fromSteps(cut.kerf),
      drop: at === bar.cuts.length - 1 ? fromSteps(bar.drop) : null,
    })));

/** Columns of `cut-list.csv`, as the contract names them. */
export function cutColumns(units: Units): readonly Column<CutRow>[] {
  const size = length(units);
  return [
    userText('section', (row) => row.section),
    size('stock_length', (row) => row.stock),
    figure('integer', 'bar', (row) => row.bar),
    figure('integer', 'cut', (row) => row.cut),
    userText('mark', (row) => row.mark),
    size('length', (row) => row.length),
    size('kerf', (row) => row.kerf),
    size('drop', (row) => row.drop),
  ];
}
