/** Nests: every stock sheet as a picture, what is cut from it, how full it is, and what no plan can undercut. */
import { sheetPoint } from '../../base/points.ts';
import { printSize } from '../../drafting/kit.ts';
import { type Column, type Drawing } from '../../drafting/model.ts';
import { noteHeight } from '../../drafting/table.ts';
import { type NamedSheet, type PlateNest, shopPlates, type ShopPlates } from '../../shop/nesting/index.ts';
import { say, type StringKey } from '../../text/index.ts';
import { drawingOf } from '../drawing-of.ts';
import { type Block, flowBlocks, freeUnder } from '../flow.ts';
import { type DrawInput, type Page, pageOf } from '../input.ts';
import { tableBlocks } from '../table-blocks.ts';
import { sheetBlock } from './sheet-block.ts';

const SERIES = '15';

export function nestDrawings(input: DrawInput): Drawing[] {
  const shop = shopPlates(input.brief, input.parts);
  if (shop.plates.length === 0) return [];
  const page = pageOf(input);
  const sheets = new Map(shop.nests.flatMap((nest) => nest.sheets).map((sheet) => [sheet.names[0]!, sheet]));
  const notes = [notesBlock(page, shop)];
  const under = freeUnder(page, [notes]);
  const tables = shop.nests.flatMap((nest) => summaryBlocks(page, nest, under));
  const pictures = shop.nests.map(({ sheets }) => sheets.map((sheet) => sheetBlock(page, shop, sheet, viewTitle(page, sheet))));
  return flowBlocks(page, [notes, tables, ...pictures]).map((filled, i) => {
    const shown = filled.views.map(({ id }) => sheets.get(id)!).flatMap(({ names }) => names);
    const title = shown.length === 0 ? say('nests.title-list') : say('nests.title', { names: rangeOf(shown) });
    return drawingOf(page, filled, SERIES, i, title, say('nests.file'));
  });
}

const percent = (share: number): string => say('nests.percent', { value: (100 * share).toFixed(0) });
const rangeOf = (names: readonly string[]): string => (names.length === 1 ? names[0]! : say('nests.range', { first: names[0]!, last: names.at(-1)! }));
const namesOf = ({ names }: NamedSheet): string => rangeOf(names);
const sizeOf = (page: Page, { size }: NamedSheet): string => say('term.figure-pair', { a: printSize(page.kit, size.long), b: printSize(page.kit, size.short) });

const viewTitle = (page: Page, sheet: NamedSheet): string =>
  say(sheet.count === 1 ? 'nests.view' : 'nests.view-more', { name: namesOf(sheet), count: sheet.count, size: sizeOf(page, sheet), used: percent(sheet.utilization) });

/** `under`: paper under the words above, where a table begins. */
function summaryBlocks(page: Page, { section, sheets }: PlateNest, under: number): readonly Block[] {
  const column = (key: StringKey, align: Column['align']): Column => ({ title: say(key), align });
  const columns = [
    column('nests.head.sheets', 'start'), column('nests.head.count', 'end'), column('nests.head.size', 'start'), column('nests.head.used', 'end'), column('nests.head.plates', 'start'),
  ];
  const rows = sheets.map((sheet) => [namesOf(sheet), String(sheet.count), sizeOf(page, sheet), percent(sheet.utilization), platesOn(sheet)]);
  const title = say('nests.summary', { section });
  return rows.length === 0 ? [] : tableBlocks(page, section, title, columns, rows, { first: { height: under, count: 2 } });
}

function platesOn({ parts }: NamedSheet): string {
  const counts = new Map<string, number>();
  for (const { id } of parts) counts.set(id, (counts.get(id) ?? 0) + 1);
  return [...counts].map(([mark, count]) => (count === 1 ? mark : say('nests.times', { mark, count }))).join(', ');
}

function notesBlock(page: Page, { plates, nests, spacing }: ShopPlates): Block {
  const lines = [
    ...nests.filter(({ sheets }) => sheets.length > 0).map(({ section, sheets, least, partArea, stockArea }) => say('nests.notes.bound', {
      section, sheets: sheets.reduce((sum, { count }) => sum + count, 0), least: least.sheets, used: percent(partArea / stockArea), stock: percent(least.stockArea / stockArea),
    })),
    ...nests.filter(({ left }) => left.length > 0).map(({ section, left }) => say('nests.notes.left', { section, marks: left.map(({ id }) => id).join(', ') })),
    ...plates.flatMap(({ mark, refusal }) => (refusal === null ? [] : [say('nests.notes.refused', { mark, reason: say(`plates.refusal.${refusal}`) })])),
    say('nests.notes.spacing', { spacing: printSize(page.kit, spacing, true) }),
    say('nests.notes.grain'),
  ];
  const width = page.room.width;
  const title = say('nests.notes.title');
  const height = noteHeight(page.kit, title, lines, width);
  return { width, height, label: title, place: (x, y) => ({ notes: [{ title, lines, at: sheetPoint(x, y + height), width }] }) };
}
