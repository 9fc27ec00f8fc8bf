/** Tables: as wide as their words need, ruled, cut into pages where they are longer than the room. */
import { type SheetPoint } from '../base/points.ts';
import { type Column, type Table } from './model.ts';
import { type Kit, PENS, makeText, measureText } from './kit.ts';
import { type Stroke } from './primitives.ts';
import { lineStroke, toSheet } from './strokes.ts';
import { wrapText } from './wrap.ts';

const padOf = (kit: Kit): number => 0.5 * kit.h + kit.clear;

export const rowHeight = (kit: Kit): number => kit.up + kit.down + 2 * kit.clear + 0.01;

/** Paper height of a table with so many rows, its title and heading included. */
export const tableHeight = (kit: Kit, rows: number): number => rowHeight(kit) * (rows + 2);

/** Column widths that hold every word. */
export function columnWidths(kit: Kit, columns: readonly Column[], rows: readonly (readonly string[])[]): number[] {
  return columns.map((column, i) => {
    let widest = measureText(kit, column.title) as number;
    for (const row of rows) widest = Math.max(widest, measureText(kit, row[i] ?? ''));
    return widest + 2 * padOf(kit);
  });
}

/** Rows whose last column is wrapped to the room that is left: a wrapped row goes on in the next, its other cells empty. */
export function wrapLastColumn(
  kit: Kit,
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  width: number,
): string[][] {
  const last = columns.length - 1;
  const others = columnWidths(kit, columns.slice(0, last), rows).reduce((sum, w) => sum + w, 0);
  const room = Math.max(width - others - 2 * padOf(kit), 12 * kit.h);
  return rows.flatMap((row) =>
    wrapText(kit, row[last] ?? '', room).map((line, i) => [...row.slice(0, last).map((cell) => (i === 0 ? cell : '')), line]),
  );
}

/** How many rows a table may have in so much height; at least one. */
export const rowsIn = (kit: Kit, height: number): number => Math.max(1, Math.floor(height / rowHeight(kit)) - 2);

export function tableStrokes(kit: Kit, table: Table): Stroke[] {
  const high = rowHeight(kit);
  const pad = padOf(kit);
  const width = table.widths.reduce((sum, w) => sum + w, 0);
  const { x, y } = table.at;
  const strokes: Stroke[] = [];
  const baseline = (row: number): number => y - row * high + (high - kit.up - kit.down) / 2 + kit.down;
  const cell = (row: number, i: number, text: string, align: Column['align'], left: number): void => {
    if (text === '') return;
    const w = table.widths[i]!;
    const at = toSheet({ x: align === 'start' ? left + pad : left + w - pad, y: baseline(row) });
    strokes.push(makeText(kit, 'NOTES', text, at, align));
  };
  if (table.title !== '') strokes.push(makeText(kit, 'NOTES', table.title, toSheet({ x, y: baseline(1) }), 'start'));
  const bottom = y - high * (table.rows.length + 2);
  for (const [at, pen] of [
    [y - high, PENS.frame],
    [y - 2 * high, PENS.frame],
    [bottom, PENS.frame],
  ] as const) {
    strokes.push(lineStroke(pen, { x, y: at }, { x: x + width, y: at }));
  }
  for (let r = 1; r < table.rows.length; r += 1) {
    const at = y - high * (r + 2);
    strokes.push(lineStroke(PENS.rule, { x, y: at }, { x: x + width, y: at }));
  }
  let left = x;
  table.columns.forEach((column, i) => {
    cell(2, i, column.title, column.align, left);
    table.rows.forEach((row, r) => {
      cell(r + 3, i, row[i] ?? '', column.align, left);
    });
    strokes.push(lineStroke(PENS.rule, { x: left, y: y - high }, { x: left, y: bottom }));
    left += table.widths[i]!;
  });
  strokes.push(lineStroke(PENS.rule, { x: left, y: y - high }, { x: left, y: bottom }));
  return strokes;
}

/** Words under a heading, wrapped to a width. */
export function noteStrokes(kit: Kit, title: string, lines: readonly string[], at: SheetPoint, width: number): Stroke[] {
  const strokes: Stroke[] = [];
  let y = at.y - kit.up - kit.clear;
  const line = (text: string, indent: number): void => {
    strokes.push(makeText(kit, 'NOTES', text, toSheet({ x: at.x + indent, y }), 'start'));
    y -= kit.pitch;
  };
  if (title !== '') {
    line(title, 0);
    strokes.push(lineStroke(PENS.frame, { x: at.x, y: y + kit.up + 0.5 * kit.clear }, { x: at.x + width, y: y + kit.up + 0.5 * kit.clear }));
    y -= 2 * kit.clear;
  }
  for (const text of lines) wrapText(kit, text, width).forEach((part) => { line(part, 0); });
  return strokes;
}

/** Paper height of such a note. */
export function noteHeight(kit: Kit, title: string, lines: readonly string[], width: number): number {
  const wrapped = lines.reduce((sum, text) => sum + wrapText(kit, text, width).length, 0);
  return kit.up + kit.clear + (title === '' ? 0 : kit.pitch + 2 * kit.clear) + wrapped * kit.pitch;
}
