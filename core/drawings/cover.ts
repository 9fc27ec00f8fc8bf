/** The cover: what is in the set, its revisions, notes to the shop and cautions. */
import { sheetPoint } from '../base/points.ts';
import { noteHeight, wrapLastColumn } from '../drafting/table.ts';
import { printSize } from '../drafting/kit.ts';
import { type Column, type Drawing, type Note } from '../drafting/model.ts';
import { capacityLines, capacityOf } from '../checks/index.ts';
import { say, type StringKey } from '../text/index.ts';
import { CAUTIONS } from './cautions.ts';
import { type DrawingChange } from './changes/compare.ts';
import { type Block, flowBlocks, freeUnder } from './flow.ts';
import { type DrawInput, type Page, pageOf } from './input.ts';
import { drawingOf } from './drawing-of.ts';
import { tableBlocks } from './table-blocks.ts';

const NOTES: readonly StringKey[] = [
  'drawings.note.faces', 'drawings.note.marks', 'drawings.note.lapped', 'drawings.note.rolled', 'drawings.note.gauge', 'drawings.note.measure',
];

/** What changed since an earlier issue, and that letter. */
export interface Since {
  readonly letter: string;
  readonly changes: readonly DrawingChange[];
}

export function coverDrawings(input: DrawInput, set: readonly Drawing[], since: Since | null = null): Drawing[] {
  const page = pageOf(input);
  const { brief } = input;
  const notes: Block[] = [
    noteBlock(page, say('drawings.cover.notes'), NOTES.map((key) => say(key, { gap: printSize(page.kit, brief.shop.weldGap) }))),
    noteBlock(page, say('drawings.cover.cautions'), CAUTIONS.map((key) => say(key))),
    noteBlock(page, say('capacity.title'), capacityLines(brief, capacityOf(brief, input.layout.runs))),
  ];
  const revisions = tableBlocks(
    page, say('drawings.cover.title'), say('drawings.cover.revisions'),
    [{ title: say('drawings.cover.letter'), align: 'start' }, { title: say('drawings.cover.date'), align: 'start' }, { title: say('drawings.cover.note'), align: 'start' }],
    [...brief.revisions, brief.revision].map(({ letter, date, note }) => [letter, date === '' ? '-' : date, note]),
  );
  const changed = since === null ? [] : tableBlocks(
    page, say('drawings.cover.title'), say('drawings.cover.changes', { letter: since.letter }),
    [{ title: say('drawings.cover.number'), align: 'start' }, { title: say('drawings.cover.change'), align: 'start' }, { title: say('drawings.cover.drawing'), align: 'start' }],
    since.changes.length === 0
      ? [['', say('drawings.cover.noChange'), '']]
      : since.changes.map(({ number, title, kind }) => [number, say(`drawings.cover.change.${kind}`), title]),
    { first: { height: freeUnder(page, [notes]), count: 2 } },
  );
  const columns: readonly Column[] = [
    { title: say('drawings.cover.number'), align: 'start' }, { title: say('drawings.cover.paper'), align: 'start' }, { title: say('drawings.cover.drawing'), align: 'start' },
  ];
  const rows = set.map((drawing) => [drawing.number, drawing.paper.name, drawing.title]);
  // Half a page wide, so that two columns of a long list stand side by side.
  const above = [notes, [...revisions, ...changed]];
  const first = { height: freeUnder(page, above), count: 2 };
  const list = tableBlocks(page, say('drawings.cover.title'), say('drawings.cover.list'), columns, wrapLastColumn(page.kit, columns, rows, page.room.width / 2 - 0.2), { first });
  return flowBlocks(page, [...above, list]).map((filled, i) => drawingOf(page, filled, '0', i, say('drawings.cover.title'), say('drawings.cover.file')));
}

/** A third of the page's width, or all of it on small paper. */
function noteBlock(page: Page, title: string, lines: readonly string[]): Block {
  const width = page.room.width > 130 * page.kit.h ? (page.room.width - 0.6) / 3 : page.room.width;
  const spaced = lines.map((line) => `- ${line}`);
  const height = noteHeight(page.kit, title, spaced, width);
  return {
    width,
    height,
    label: title,
    place: (x, y) => ({ notes: [{ title, lines: spaced, at: sheetPoint(x, y + height), width } satisfies Note] }),
  };
}
