import Papa from 'papaparse';
import { type Inches } from '../../core/base/quantity.ts';
import { type Params, type StringKey } from '../../core/text/index.ts';
import { parseLength, printLength } from '../../core/units/index.ts';
import { type Refusal } from '../disk/index.ts';

/** A row of the pieces to cut. */
export interface PieceToCut {
  readonly mark: string;
  readonly section: string;
  readonly length: Inches;
  readonly quantity: number;
}

const COLUMNS = ['mark', 'section', 'length', 'quantity'] as const;
const LONGEST_TEXT = 60;
const MOST_PIECES = 100_000;

/** Reads a CSV of pieces and holds them against the stock. Every fault is told at once; rows count from 1 under the header. */
export function readPieces(text: string, shown: string, stock: ReadonlyMap<string, readonly Inches[]>): readonly PieceToCut[] | readonly Refusal[] {
  const refusals: Refusal[] = [];
  const refuse = (key: StringKey, params: Params = {}): void => void refusals.push({ path: shown, key, params });
  const { data, errors } = Papa.parse<readonly string[]>(text.replace(/^\ufeff/, ''), { skipEmptyLines: 'greedy' });
  const broken = errors.find((error) => error.type === 'Quotes');
  if (broken !== undefined) refuse('cut-list.csv', { row: broken.row ?? 0 });
  const [header = [], ...rows] = data;
  const names = header.map((name) => name.trim().toLowerCase());
  for (const name of COLUMNS) {
    const count = names.filter((entry) => entry === name).length;
    if (count === 0) refuse('cut-list.column', { name });
    if (count > 1) refuse('cut-list.column-twice', { name });
  }
  if (refusals.length > 0) return refusals;
  if (rows.length === 0) refuse('cut-list.empty');
  const at = Object.fromEntries(COLUMNS.map((name) => [name, names.indexOf(name)])) as Record<(typeof COLUMNS)[number], number>;
  const pieces = rows.flatMap((cells, index): PieceToCut[] => {
    const row = index + 1;
    const cell = (name: (typeof COLUMNS)[number]): string => (cells[at[name]] ?? '').trim();
    const [mark, section] = [cell('mark'), cell('section')];
    const length = parseLength(cell('length'));
    const quantity = /^\d{1,6}$/.test(cell('quantity')) ? Number(cell('quantity')) : NaN;
    const before = refusals.length;
    if (mark === '' || mark.length > LONGEST_TEXT) refuse('cut-list.row-mark', { row });
    if (section === '' || section.length > LONGEST_TEXT) refuse('cut-list.row-section', { row });
    if (length === null || length <= 0) refuse('cut-list.row-length', { row, value: cell('length').slice(0, LONGEST_TEXT) });
    if (!(quantity <= MOST_PIECES)) refuse('cut-list.row-quantity', { row, value: cell('quantity').slice(0, LONGEST_TEXT) });
    if (refusals.length > before || length === null) return [];
    const longest = stock.get(section)?.at(-1);
    if (longest === undefined) refuse('cut-list.row-stock', { row, section });
    else if (length > longest) {
      const size = (value: Inches): string => printLength(value, 'in', 'bracket');
      refuse('cut-list.row-too-long', { row, mark, section, length: size(length), longest: size(longest) });
    }
    return [{ mark, section, length, quantity }];
  });
  const count = pieces.reduce((sum, piece) => sum + piece.quantity, 0);
  if (count > MOST_PIECES) refuse('cut-list.too-many', { count });
  return refusals.length > 0 ? refusals : pieces;
}
