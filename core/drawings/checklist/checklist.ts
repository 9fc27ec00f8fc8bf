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
import { checkStations, type CheckStation, EVERYWHERE } from './items.ts';

/** Letter or A4, to carry along the walk; on larger paper of the family where that makes one page of it. */
export function checklistDrawings(input: DrawInput): Drawing[] {
  const stations = checkStations(input);
  let page = pageOf(input, paperNamed(input.brief.paper.startsWith('ISO') ? 'ISO A4' : 'ANSI A'));
  let filled = pagesOn(input, page, stations);
  for (let larger = largerPaper(page.paper); filled.length > 1 && larger !== null; larger = largerPaper(page.paper)) {
    page = pageOf(input, larger);
    filled = pagesOn(input, page, stations);
  }
  return filled.map((one, i) => drawingOf(page, one, '16', i, say('checklist.title'), say('checklist.file')));
}

function pagesOn(input: DrawInput, page: Page, stations: readonly CheckStation[]): readonly Filled[] {
  const how = howBlock(page, [
    say('checklist.how.eyes', { height: printSize(page.kit, input.brief.cattle.eyeHeight) }), say('checklist.how.tick'),
    EVERYWHERE.map((key, i) => say('checklist.how.column', { number: String(i + 1), look: say(key) })).join('; '), say('checklist.how.safe'),
  ]);
  const height = page.room.height - how.height - 0.3;
  const tries = LOOKS.map((most) => flowBlocks(page, [[how], tables(page, stations, height, most * page.kit.h)]));
  return tries.find((one) => one.length === 1) ?? tries[0]!;
}

function howBlock(page: Page, lines: readonly string[]): Block {
  const title = say('checklist.how');
  const { width } = page.room;
  const height = noteHeight(page.kit, title, lines, width);
  return { width, height, label: title, place: (x, y) => ({ notes: [{ title, lines, at: sheetPoint(x, y + height), width }] }) };
}

/** Letter heights that the column of what to look at may take, tried in order, and the least of the column to write in. */
const LOOKS = [44, 36, 28];
const NOTE = 14;

/** As many tables beside each other as have room, each cut to the height; a box to tick stands empty, a cell with nothing to tick does not. */
function tables(page: Page, stations: readonly CheckStation[], height: number, mostLook: number): readonly Block[] {
  const { kit, room } = page;
  const pad = 0.5 * kit.h + kit.clear;
  const boxes = EVERYWHERE.map((_, i) => String(i + 1));
  const columns = [say('checklist.station'), ...boxes, say('checklist.look'), say('checklist.tick'), say('checklist.note')].map((title): Column => ({ title, align: 'start' }));
  const fit = (words: readonly string[]): number => Math.max(...words.map((text) => measureText(kit, text))) + 2 * pad + 0.01;
  const station = fit([say('checklist.station'), ...stations.map(({ run }) => run)]);
  const tick = fit([say('checklist.tick')]);
  const beside = station + (boxes.length + 1) * tick;
  const look = Math.min(mostLook, fit(stations.flatMap(({ looks }) => [...looks, say('checklist.look')])), room.width - beside - NOTE * kit.h);
  const count = Math.max(1, Math.floor((room.width + 0.25) / (beside + look + NOTE * kit.h + 0.25)));
  const note = (room.width - 0.25 * (count - 1)) / count - beside - look - 0.01;
  const widths = [station, ...boxes.map(() => tick), look, tick, note];
  const none = say('checklist.none');
  const rows = stations.flatMap(({ run, looks }) => {
    const lines = looks.flatMap((words) => wrapText(kit, words, look - 2 * pad).map((line, part) => ({ line, box: part === 0 ? '' : none })));
    return (lines.length === 0 ? [{ line: '', box: none }] : lines)
      .map(({ line, box }, i) => (i === 0 ? [run, ...boxes.map(() => ''), line, box, ''] : ['', ...boxes.map(() => none), line, box, '']));
  });
  const most = rowsIn(kit, height);
  const title = say('checklist.title');
  return columnsOf(rows, most).map((own): Block => {
    const high = tableHeight(kit, own.length);
    return {
      width: beside + look + note,
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
