import { MM_PER_INCH, inches, pounds } from '../../../core/base/quantity.ts';
import { say } from '../../../core/text/index.ts';
import { printLength, printWeight } from '../../../core/units/index.ts';
import { type Table, type Units } from '../../worker/protocol.ts';

export interface Fact {
  readonly name: string;
  readonly value: string;
}

/** Rows of a schedule that are about a piece mark. */
export const rowsOfMark = (table: Table, mark: string): readonly (readonly string[])[] =>
  table.markColumn === null ? [] : table.rows.filter((row) => row[table.markColumn ?? -1] === mark);

/** What a piece is, from its rows in the list of pieces; empty where it is not in it. */
export function aboutPiece(pieces: Table | null, mark: string, units: Units): readonly Fact[] {
  if (pieces === null) return [];
  const rows = rowsOfMark(pieces, mark);
  const [row] = rows;
  if (row === undefined) return [];
  const cell = (of: readonly string[], name: string): string => of[pieces.columns.findIndex((column) => column.name === name)] ?? '';
  const length = (name: string): string => (cell(row, name) === '' ? '' : printed(Number(cell(row, name)), units));
  const weight = cell(row, 'weight_lb');
  const facts: readonly (readonly [string, string])[] = [
    [say('place-make.fact.kind'), cell(row, 'kind')],
    [say('place-make.fact.quantity'), String(rows.reduce((sum, one) => sum + Number(cell(one, 'quantity')), 0))],
    [say('place-make.fact.section'), cell(row, 'section')],
    [say('place-make.fact.length'), length('length')],
    [say('place-make.fact.short'), length('length_short')],
    [say('place-make.fact.height'), length('height')],
    [say('place-make.fact.radius'), length('bend_radius')],
    [say('place-make.fact.weight'), weight === '' ? '' : printWeight(pounds(Number(weight)), units)],
    [say('place-make.fact.where'), placesOf(rows.map((one) => ({ run: cell(one, 'run'), side: cell(one, 'side') })))],
  ];
  return facts.filter(([, value]) => value !== '').map(([name, value]) => ({ name, value }));
}

/** A cell's length, which is in the project's units, as a drawing prints it. */
const printed = (value: number, units: Units): string => printLength(inches(units === 'mm' ? value / MM_PER_INCH : value), units, 'bracket');

/** `alley left and right, crowd-pen right`: runs of one part and their sides called together, in the order of the walk. */
function placesOf(places: readonly { readonly run: string; readonly side: string }[]): string {
  const sides = new Map<string, Set<string>>();
  for (const { run, side } of places) {
    const part = run.replace(/-\d+$/, '');
    sides.set(part, (sides.get(part) ?? new Set()).add(side));
  }
  return [...sides].map(([run, found]) => (found.size > 1 ? say('where.sides', { run }) : say('where.side', { run, side: [...found].join('') }).trim())).join(', ');
}
