import { type Brief } from '../../brief/index.ts';
import { makeKit } from '../../drafting/kit.ts';
import { frameStrokes, roomInside } from '../../drafting/frame.ts';
import { type TitleBlock } from '../../drafting/model.ts';
import { paperNamed } from '../../drafting/paper.ts';
import { type Font } from '../../drafting/font.ts';
import { type Sheet, type Stroke } from '../../drafting/primitives.ts';
import { say } from '../../text/index.ts';
import { type Block, gapBlock, headingBlock, paragraphBlocks, rowBlock } from './report-blocks.ts';
import { cardBlocks, type DrawPlace } from './report-cards.ts';
import { type ReportCard, type ReportTable } from './report-data.ts';

/** A part of the report under a heading. */
export type ReportPart =
  | { readonly kind: 'words'; readonly title: string; readonly paragraphs: readonly string[] }
  | { readonly kind: 'cards'; readonly title: string; readonly cards: readonly ReportCard[] }
  | { readonly kind: 'table'; readonly table: ReportTable };

export interface ReportWords {
  readonly title: string;
  /** Paragraphs at the head. */
  readonly notes: readonly string[];
  readonly parts: readonly ReportPart[];
}

/** A report as sheets: letter or A4, as the project's drawings are ANSI or ISO. Its pages are numbered R1, R2, … */
export function reportPages(font: Font, brief: Brief, block: TitleBlock, words: ReportWords, drawPlace: DrawPlace): readonly Sheet[] {
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
  flow([headingBlock(kit, room, words.title), ...words.notes.flatMap((note) => paragraphBlocks(kit, room, note))], null);
  for (const part of words.parts) {
    switch (part.kind) {
      case 'words':
        flow([gapBlock(kit), headingBlock(kit, room, part.title), ...part.paragraphs.flatMap((text) => paragraphBlocks(kit, room, text))], null);
        break;
      case 'cards':
        flow([gapBlock(kit), headingBlock(kit, room, part.title), ...cardBlocks(kit, room, part.cards, drawPlace)], null);
        break;
      case 'table': {
        const { table } = part;
        const heading = rowBlock(kit, room, table, table.columns.map((column) => column.title), true);
        flow([gapBlock(kit), headingBlock(kit, room, table.title)], null);
        flow([heading, ...table.rows.map((row) => rowBlock(kit, room, table, row, false))], heading);
        break;
      }
    }
  }
  return pages.map((strokes, index) => {
    const number = `R${String(index + 1)}`;
    const frame = frameStrokes(kit, paper, block, { number, title: words.title, scaleText: say('report.no-scale') });
    return { number, title: words.title, file: 'findings', paper, scale: 1, units: brief.units, views: [], primitives: [...frame, ...strokes] };
  });
}
