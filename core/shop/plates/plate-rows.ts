import { type Inches } from '../../base/quantity.ts';
import { figure, length, text, userText, type Column, type Units } from '../../schedules/column.ts';
import { say } from '../../text/index.ts';
import { type Plate } from './types.ts';

/** One plate mark. */
export interface PlateRow {
  readonly mark: string;
  readonly quantity: number;
  readonly thickness: Inches;
  readonly width: Inches;
  readonly height: Inches;
  readonly area: number;
  readonly cutLength: Inches;
  readonly pierces: number;
  /** Names of the stock sheets that it is cut from; empty where it is on none. */
  readonly nest: string;
  readonly section: string;
  /** Rolled after it is cut, to this radius at mid-thickness. */
  readonly bendRadius: Inches | null;
  /** Why it is not for the table, or bears no mark. */
  readonly note: string;
}

/** The plate list in the order of the walk. `nests` names the sheets of a mark. */
export const plateRows = (plates: readonly Plate[], nests: (mark: string) => readonly string[]): readonly PlateRow[] =>
  plates.map((plate) => ({
    mark: plate.mark,
    quantity: plate.quantity,
    thickness: plate.thickness,
    width: plate.width,
    height: plate.height,
    area: plate.area,
    cutLength: plate.cutLength,
    pierces: plate.pierces,
    nest: nests(plate.mark).join('; '),
    section: plate.section,
    bendRadius: plate.bend?.radius ?? null,
    note: plate.refusal !== null ? say(`plates.refusal.${plate.refusal}`) : plate.etch === null ? say('plates.unmarked') : nests(plate.mark).length === 0 ? say('nests.none-holds') : '',
  }));

/** Columns of `plates.csv`; the last three are ours, to the right of the contract's. Areas are square inches in either units. */
export function plateColumns(units: Units): readonly Column<PlateRow>[] {
  const size = length(units);
  return [
    text('mark', (row) => row.mark),
    figure('integer', 'quantity', (row) => row.quantity),
    size('thickness', (row) => row.thickness),
    size('width', (row) => row.width),
    size('height', (row) => row.height),
    figure('number', 'area_in2', (row) => row.area),
    size('cut_length', (row) => row.cutLength),
    figure('integer', 'pierces', (row) => row.pierces),
    text('nest', (row) => row.nest),
    userText('section', (row) => row.section),
    size('bend_radius', (row) => row.bendRadius),
    text('note', (row) => row.note),
  ];
}
