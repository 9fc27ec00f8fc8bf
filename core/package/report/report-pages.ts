import { type Brief } from '../../brief/index.ts';
import { makeKit, makeText, measureText, PENS, type Kit } from '../../drafting/kit.ts';
import { frameStrokes, roomInside } from '../../drafting/frame.ts';
import { type TitleBlock } from '../../drafting/model.ts';
import { paperNamed } from '../../drafting/paper.ts';
import { type Font } from '../../drafting/font.ts';
import { type Sheet, type Stroke } from '../../drafting/primitives.ts';
import { lineStroke, toSheet } from '../../drafting/strokes.ts';
import { wrapText } from '../../drafting/wrap.ts';
import { type Rect } from '../../drafting/boxes.ts';
import { inches } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { type ReportTable } from './report-rows.ts';

/** Something that stands across the page and is never cut: its height, and its strokes once its top is known. */
interface Block {
  readonly height: number;
  /** A heading is not left alone at the foot of a page. */
  readonly withNext: boolean;
  draw(top: number): Stroke[];
}

export interface ReportWords {
  readonly title: string;
  /** Paragraphs at the head. */
  readonly notes: readonly string[];
  readonly tables: readonly ReportTable[];
}

/** A report as sheets: letter or A4, as the project's drawings are ANSI or ISO. Its pages are numbered R1, R2, … */
export function reportPages(font: Font, brief: Brief, block: TitleBlock, words: ReportWords): readonly Sheet[] {
  const paper = paperNamed(brief.paper.startsWith('ISO') ? 'ISO A4' : 'ANSI A');
  const kit = makeKit(font, brief.units, paper);
  const room = roomInside(kit, paper, block);
  const pages: Stroke[][] = [];
  const top = room.y + room.height;
  let at = -Infinity;
  const stand = (piece: Block): void => {
    pages.at(-1)!.push(...piece.draw(at));
    at -= piece.height;
  };
  const flow = (pieces: readonly Block[], heading: Block | null): void => {
    pieces.forEach((piece, index) => {
      const needed = piece.height + (piece.withNext ? (pieces[index + 1]?.height ?? 0) : 0);
      if (at - needed < room.y) {
        pages.push([]);
        at = top;
        if (heading !== null && piece !== heading) stand(heading);
      }
      stand(piece);
    });
  };
  flow([line(kit, room, words.title), ...words.notes.flatMap((note) => paragraph(kit, room, note))], null);
  for (const table of words.tables) {
    const heading = rowBlock(kit, room, table, table.columns.map((column) => column.title), true);
    flow([gap(kit), line(kit, room, table.title)], null);
    flow([heading, ...table.rows.map((row) => rowBlock(kit, room, table, row, false))], heading);
  }
  return pages.map((strokes, index) => {
    const number = `R${String(index + 1)}`;
    const frame = frameStrokes(kit, paper, block, { number, title: words.title, scaleText: say('report.no-scale') });
    return { number, title: words.title, file: 'findings', paper, scale: 1, units: brief.units, views: [], primitives: [...frame, ...strokes] };
  });
}

const gap = (kit: Kit): Block => ({ height: kit.pitch, withNext: true, draw: () => [] });

const line = (kit: Kit, room: Rect, text: string): Block => ({
  height: kit.pitch * 1.3,
  withNext: true,
  draw: (top) => [
    makeText(kit, 'NOTES', text, toSheet({ x: room.x, y: top - kit.up - kit.clear }), 'start'),
    lineStroke(PENS.rule, { x: room.x, y: top - kit.pitch * 1.1 }, { x: room.x + room.width, y: top - kit.pitch * 1.1 }),
  ],
});

const paragraph = (kit: Kit, room: Rect, text: string): Block[] =>
  wrapText(kit, text, room.width).map((words) => ({
    height: kit.pitch,
    withNext: false,
    draw: (top) => [makeText(kit, 'NOTES', words, toSheet({ x: room.x, y: top - kit.up - kit.clear }), 'start')],
  }));

/** A row whose cells are wrapped to their columns, with a line under it; a heading's is thick. */
function rowBlock(kit: Kit, room: Rect, table: ReportTable, cells: readonly string[], heading: boolean): Block {
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
