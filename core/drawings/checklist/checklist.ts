/** The station checklist: one page, in walking order, to look at the place from the animals' height before the first of them come. */
import { sheetPoint } from '../../base/points.ts';
import { measureText, printSize } from '../../drafting/kit.ts';
import { type Column, type Drawing } from '../../drafting/model.ts';
import { largerPaper, paperNamed } from '../../drafting/paper.ts';
import { noteHeight, rowsIn, tableHeight } from '../../drafting/table.ts';
import { wrapText } from '../../drafting/wrap.ts';
import { say } from '../../text/index.ts';
import { drawingOf } from '../drawing-of.ts';
import { type Block, type Filled, flowBlocks } from '../flow.ts';
import { type DrawInput, type Page, pageOf } from '../input.ts';
import { checkItems, type CheckItem } from './items.ts';

/** On the project's paper, or on larger paper of its family where that makes one page of it. */
export function checklistDrawings(input: DrawInput): Drawing[] {
  const items = checkItems(input);
  let page = pageOf(input);
  let filled = pagesOn(input, page, items);
  for (let larger = largerPaper(page.paper); filled.length > 1 && larger !== null; larger = largerPaper(page.paper)) {
    page = pageOf(input, paperNamed(larger.name));
    filled = pagesOn(input, page, items);
  }
  return filled.map((one, i) => drawingOf(page, one, '16', i, say('checklist.title'), say('checklist.file')));
}

function pagesOn(input: DrawInput, page: Page, items: readonly CheckItem[]): readonly Filled[] {
  const how = howBlock(page, [say('checklist.how.eyes', { height: printSize(page.kit, input.brief.cattle.eyeHeight) }), say('checklist.how.tick'), say('checklist.how.safe')]);
  return flowBlocks(page, [[how], tables(page, items, page.room.height - how.height - 0.3)]);
}

function howBlock(page: Page, lines: readonly string[]): Block {
  const title = say('checklist.how');
  const { width } = page.room;
  const height = noteHeight(page.kit, title, lines, width);
  return { width, height, label: title, place: (x, y) => ({ notes: [{ title, lines, at: sheetPoint(x, y + height), width }] }) };
}

/** Letter heights of the column of what to look at, and the least of the column to write in. */
const LOOK = 44;
const NOTE = 14;

/** As many tables beside each other as have room, each cut to the height; on its first line a look has the box to tick. */
function tables(page: Page, items: readonly CheckItem[], height: number): readonly Block[] {
  const { kit, room } = page;
  const pad = 0.5 * kit.h + kit.clear;
  const columns: readonly Column[] = [say('checklist.station'), say('checklist.look'), say('checklist.tick'), say('checklist.note')].map((title) => ({ title, align: 'start' }));
  const fit = (words: readonly string[]): number => Math.max(...words.map((text) => measureText(kit, text))) + 2 * pad + 0.01;
  const station = fit([columns[0]!.title, ...items.map(({ run }) => run)]);
  const tick = fit([columns[2]!.title]);
  const look = Math.min(LOOK * kit.h, room.width - station - tick - NOTE * kit.h);
  const count = Math.max(1, Math.floor((room.width + 0.25) / (station + look + tick + NOTE * kit.h + 0.25)));
  const note = (room.width - 0.25 * (count - 1)) / count - station - look - tick - 0.01;
  const widths = [station, look, tick, note];
  const rows = items.flatMap(({ run, look: words }, i) =>
    wrapText(kit, words, look - 2 * pad).map((line, part) => [part === 0 && items[i - 1]?.run !== run ? run : '', line, '', '']));
  const most = rowsIn(kit, height);
  const title = say('checklist.title');
  return columnsOf(rows, most).map((own): Block => {
    const high = tableHeight(kit, own.length);
    return {
      width: station + look + tick + note,
      height: high,
      label: title,
      follows: true,
      place: (x, y) => ({ tables: [{ title: '', columns, rows: own, at: sheetPoint(x, y + high), widths }] }),
    };
  });
}

/** Rows cut into columns of `most` at the longest: before a station where that takes no more columns, else where they are full. */
function columnsOf(rows: readonly (readonly string[])[], most: number): readonly (readonly (readonly string[])[])[] {
  const needed = Math.ceil(rows.length / most);
  const kept: (readonly string[])[][] = [];
  for (let from = 0; from < rows.length;) {
    const full = Math.min(from + most, rows.length);
    const station = full === rows.length ? full : rows.slice(0, full + 1).findLastIndex((row, i) => i > from && row[0] !== '');
    const to = station > from ? station : full;
    kept.push(rows.slice(from, to));
    from = to;
  }
  return kept.length === needed ? kept : Array.from({ length: needed }, (_, i) => rows.slice(i * most, (i + 1) * most));
}
