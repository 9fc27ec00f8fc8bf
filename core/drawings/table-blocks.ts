/**
 * A table of any length and width as blocks that each fit a page. One too wide wraps its last column where that leaves it room, else
 * it goes on two tables, its first column on both.
 */
import { sheetPoint } from '../base/points.ts';
import { columnWidths, rowsIn, tableHeight, wrapLastColumn } from '../drafting/table.ts';
import { measureText } from '../drafting/kit.ts';
import { type Column } from '../drafting/model.ts';
import { type Block } from './flow.ts';
import { type Page } from './input.ts';

interface Options {
  /** Of each block, at the most: without it the page's. */
  readonly height?: number;
  /** Of the first blocks, where they have less than that: on a page that other things stand on. */
  readonly first?: { readonly height: number; readonly count: number };
  readonly follows?: boolean;
}

export function tableBlocks(
  page: Page,
  label: string,
  title: string,
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  options: Options = {},
): Block[] {
  const { kit, room } = page;
  const natural = columnWidths(kit, columns, rows);
  const whole = sum(natural);
  if (whole <= room.width) return cut(page, label, title, columns, rows, options);
  const last = natural[natural.length - 1]!;
  if (columns.length <= 2 || whole - last + LAST * kit.h <= room.width) {
    return cut(page, label, title, columns, wrapLastColumn(kit, columns, rows, room.width - 0.01), options);
  }
  const half = Math.ceil((columns.length - 1) / 2);
  return [range(1, 1 + half), range(1 + half, columns.length)].flatMap((part) => {
    const picked = [0, ...part];
    return tableBlocks(page, label, title, picked.map((i) => columns[i]!), rows.map((row) => picked.map((i) => row[i] ?? '')), options);
  });
}

/** The fewest rows that are worth beginning a table for at the foot of a page. */
const FEW = 6;

/** Letter heights that a last column needs to be worth wrapping. */
const LAST = 24;

const sum = (list: readonly number[]): number => list.reduce((total, w) => total + w, 0);
const range = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, i) => from + i);

function cut(
  page: Page,
  label: string,
  title: string,
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  options: Options,
): Block[] {
  const { kit, room } = page;
  const widths = columnWidths(kit, columns, rows);
  const whole = rowsIn(kit, options.height ?? room.height);
  const less = options.first === undefined ? 0 : rowsIn(kit, options.first.height);
  const blocks: Block[] = [];
  for (let from = 0; from < Math.max(1, rows.length);) {
    const most = less >= FEW && blocks.length < (options.first?.count ?? 0) ? less : whole;
    const part = rows.slice(from, from + most);
    from += most;
    const height = tableHeight(kit, part.length);
    blocks.push({
      // A title can be longer than what stands under it.
      width: Math.max(sum(widths), Math.min(room.width, measureText(kit, title))),
      height,
      label,
      follows: options.follows === true,
      place: (x, y) => ({ tables: [{ title, columns, rows: part, at: sheetPoint(x, y + height), widths }] }),
    });
  }
  return blocks;
}
