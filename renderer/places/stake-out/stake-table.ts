import { inches } from '../../../core/base/quantity.ts';
import { type StakeRow } from '../../../core/schedules/index.ts';
import { say } from '../../../core/text/index.ts';
import { printLength } from '../../../core/units/index.ts';
import { type Stakes, type Table, type TableColumn } from '../../worker/protocol.ts';
import { type FigureOf } from '../../parts/table-rows.ts';

export interface StakeTable {
  readonly table: Table;
  /** The full figure behind a printed cell. */
  readonly figureOf: FigureOf;
}

interface Column {
  readonly name: string;
  readonly figure: ((row: StakeRow) => number | null) | null;
  readonly cell: (row: StakeRow) => string;
}

/** The points as the stakeout drawings print them: sizes in feet and inches or millimeters, sorted by their full figures. */
export function stakeTable(stakes: Stakes, set: readonly string[]): StakeTable {
  const columns = columnsOf(stakes, new Set(set));
  const rowOf = new Map(stakes.rows.map((row) => [row.point, row]));
  const rows = stakes.rows.map((row) => columns.map((column) => column.cell(row)));
  const heads = columns.map(({ name, figure }): TableColumn => ({ name, figure: figure !== null, unit: figure !== null && stakes.units === 'mm' ? 'mm' : null }));
  return {
    table: { id: 'stakes', title: say('place-stake-out.points'), columns: heads, rows, markColumn: null },
    figureOf: (row, column) => {
      const stake = rowOf.get(row[0] ?? '');
      return stake === undefined ? 0 : (columns[column]?.figure?.(stake) ?? 0);
    },
  };
}

function columnsOf({ units, rows }: Stakes, set: ReadonlySet<string>): readonly Column[] {
  const size = (name: string, figure: (row: StakeRow) => number | null): Column => ({
    name, figure,
    cell: (row) => {
      const value = figure(row);
      return value === null ? '' : printLength(inches(value), units, 'feet', false);
    },
  });
  const words = (name: string, cell: (row: StakeRow) => string): Column => ({ name, figure: null, cell });
  return [
    words(say('drawings.stake.point'), (row) => row.point),
    words(say('place-stake-out.column.set'), (row) => (set.has(row.point) ? say('place-stake-out.yes') : '')),
    size(say('drawings.stake.tieA'), (row) => row.tieA),
    size(say('drawings.stake.tieB'), (row) => row.tieB),
    ...(rows.some((row) => row.tieC !== null) ? [size(say('drawings.stake.tieC'), (row) => row.tieC)] : []),
    words(say('drawings.stake.side'), (row) => say(`drawings.stake.${row.baselineSide}`)),
    words(say('drawings.stake.hole'), (row) => holeWords(row, units)),
    words(say('drawings.stake.kind'), (row) => say(`drawings.stake.${row.kind}`)),
    words(say('place-stake-out.column.run'), (row) => [row.run, row.side].filter((part) => part !== null).join(' ')),
    size('x', (row) => row.x),
    size('y', (row) => row.y),
  ];
}

/** A hole's diameter and depth; empty where there is none to dig. */
export function holeWords(row: StakeRow, units: Stakes['units']): string {
  if (row.holeDiameter === null || row.holeDepth === null) return '';
  const size = (value: number, unit: boolean): string => printLength(inches(value), units, 'feet', unit);
  return say('place-stake-out.hole-size', { across: size(row.holeDiameter, false), deep: size(row.holeDepth, true) });
}
