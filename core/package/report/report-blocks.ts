/** What a page of a report is built from: pieces that stand across it, one under another. */
import { inches } from '../../base/quantity.ts';
import { type Rect } from '../../drafting/boxes.ts';
import { makeText, measureText, PENS, type Kit } from '../../drafting/kit.ts';
import { type Stroke } from '../../drafting/primitives.ts';
import { lineStroke, toSheet } from '../../drafting/strokes.ts';
import { wrapText } from '../../drafting/wrap.ts';
import { type ReportTable } from './report-data.ts';

/** Something that stands across the page and is never cut: its height, and its strokes once its top is known. */
export interface Block {
  readonly height: number;
  /** A heading is not left alone at the foot of a page. */
  readonly withNext: boolean;
  draw(top: number): Stroke[];
}

export const gapBlock = (kit: Kit): Block => ({ height: kit.pitch, withNext: true, draw: () => [] });

/** A heading with a line under it. */
export const headingBlock = (kit: Kit, room: Rect, text: string): Block => ({
  height: kit.pitch * 1.3,
  withNext: true,
  draw: (top) => [
    makeText(kit, 'NOTES', text, toSheet({ x: room.x, y: top - kit.up - kit.clear }), 'start'),
    lineStroke(PENS.rule, { x: room.x, y: top - kit.pitch * 1.1 }, { x: room.x + room.width, y: top - kit.pitch * 1.1 }),
  ],
});

/** A paragraph, line by line, so that it may go on on the next page. */
export const paragraphBlocks = (kit: Kit, room: Rect, text: string): Block[] =>
  wrapText(kit, text, room.width).map((words) => ({
    height: kit.pitch,
    withNext: false,
    draw: (top) => [makeText(kit, 'NOTES', words, toSheet({ x: room.x, y: top - kit.up - kit.clear }), 'start')],
  }));

/** A row whose cells are wrapped to their columns, with a line under it; a heading's is thick. */
export function rowBlock(kit: Kit, room: Rect, table: ReportTable, cells: readonly string[], heading: boolean): Block {
  const pad = kit.clear + 0.3 * kit.h;
  const wrapped = table.columns.map((column, index) => {
    const words = cells[index] ?? '';
    return words === '' ? [] : wrapText(kit, words, column.share * room.width - 2 * pad);
  });
  const height = Math.max(1, ...wrapped.map((lines) => lines.length)) * kit.pitch + 2 * kit.clear;
  return {
    height,
    withNext: heading,
    draw: (top) => {
      let x = room.x;
      const strokes: Stroke[] = [];
      wrapped.forEach((lines, index) => {
        lines.forEach((words, row) => {
          if (measureText(kit, words) > inches(0)) strokes.push(makeText(kit, 'NOTES', words, toSheet({ x: x + pad, y: top - 2 * kit.clear - kit.up - row * kit.pitch }), 'start'));
        });
        x += (table.columns[index]?.share ?? 0) * room.width;
      });
      strokes.push(lineStroke(heading ? PENS.frame : PENS.rule, { x: room.x, y: top - height }, { x: room.x + room.width, y: top - height }));
      return strokes;
    },
  };
}
