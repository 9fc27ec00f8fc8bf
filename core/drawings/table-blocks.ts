/** A table of any length as blocks that each fit a page. */
import { sheetPoint } from '../base/points.ts';
import { columnWidths, rowsIn, tableHeight, wrapLastColumn } from '../drafting/table.ts';
import { type Column } from '../drafting/model.ts';
import { type Block } from './flow.ts';
import { type Page } from './input.ts';

export function tableBlocks(
  page: Page,
  label: string,
  title: string,
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  options: { readonly height?: number; readonly follows?: boolean } = {},
): Block[] {
  const { kit, room } = page;
  const natural = columnWidths(kit, columns, rows).reduce((sum, w) => sum + w, 0);
  const wrapped = natural > room.width ? wrapLastColumn(kit, columns, rows, room.width) : rows;
  const widths = columnWidths(kit, columns, wrapped);
  const most = rowsIn(kit, options.height ?? room.height);
  const blocks: Block[] = [];
  for (let from = 0; from < Math.max(1, wrapped.length); from += most) {
    const part = wrapped.slice(from, from + most);
    const height = tableHeight(kit, part.length);
    blocks.push({
      width: widths.reduce((sum, w) => sum + w, 0),
      height,
      label,
      follows: options.follows === true,
      place: (x, y) => ({ tables: [{ title, columns, rows: part, at: sheetPoint(x, y + height), widths }] }),
    });
  }
  return blocks;
}
