/** The bill of materials as a drawing of its own, after the cut list that it follows from. */
import { noteHeight } from '../drafting/table.ts';
import { printSize } from '../drafting/kit.ts';
import { sheetPoint } from '../base/points.ts';
import { type Column, type Drawing } from '../drafting/model.ts';
import { materialLines } from '../schedules/index.ts';
import { billRows, type BillRow, coatedArea, pricedPremix } from '../shop/bill/index.ts';
import { shopPlates } from '../shop/nesting/index.ts';
import { unusedPrices } from '../shop/prices.ts';
import { parseSheet } from '../steel/index.ts';
import { say, type StringKey } from '../text/index.ts';
import { type Block, flowBlocks } from './flow.ts';
import { type DrawInput, type Page, pageOf } from './input.ts';
import { drawingOf } from './drawing-of.ts';
import { tableBlocks } from './table-blocks.ts';

const start = (key: StringKey): Column => ({ title: say(key), align: 'start' });
const end = (key: StringKey): Column => ({ title: say(key), align: 'end' });

/** `first`: its place among the drawings of the series. */
export function billDrawings(input: DrawInput, first = 0): Drawing[] {
  const { brief, layout, parts, cuts = null } = input;
  if (cuts === null) return [];
  const page = pageOf(input);
  const lines = materialLines(brief, layout, parts);
  const rows = billRows(brief, parts, lines, cuts, shopPlates(brief, parts));
  const kinds = new Set<string>(parts.pieces.map(({ kind }) => kind));
  const columns = [
    start('bill.item'), start('bill.section'), end('bill.quantity'), start('bill.unit'), end('bill.length'), end('bill.weight'), end('bill.unit-price'), end('bill.price'),
  ];
  const money = (value: number | null): string => (value === null ? '' : value.toFixed(2));
  const weight = ({ weight: net, boughtWeight }: BillRow): string => (boughtWeight === null ? (net === null ? '' : net.toFixed(1)) : `(${boughtWeight.toFixed(1)})`);
  const isNet = (row: BillRow): boolean => kinds.has(row.item);
  const cells = (of: readonly BillRow[]): string[][] => of.map((row) => [
    row.item, row.section, Number.isInteger(row.quantity) ? String(row.quantity) : row.quantity.toFixed(2), row.unit,
    stockSize(page, row), weight(row), money(row.unitPrice), money(row.price),
  ]);
  const title = say('bill.title');
  const notes = noteBlock(page, say('bill.notes'), notesOf(input, rows));
  const bought = tableBlocks(page, title, say('bill.bought'), columns, cells(rows.filter((row) => !isNet(row))));
  const net = tableBlocks(page, title, say('bill.pieces'), columns, cells(rows.filter(isNet)));
  return flowBlocks(page, [[...bought, notes, ...net]])
    .map((filled, index) => drawingOf(page, filled, '14', first + index, title, say('bill.file')));
}

const premix = (rows: readonly BillRow[]): boolean => rows.some(({ item }) => item === 'premix');

function stockSize({ kit }: Page, { stockLength, stockWidth }: BillRow): string {
  if (stockLength === null) return '';
  return stockWidth === null ? printSize(kit, stockLength) : say('term.figure-pair', { a: printSize(kit, stockLength), b: printSize(kit, stockWidth) });
}

function notesOf({ brief, parts }: DrawInput, rows: readonly BillRow[]): readonly string[] {
  const priced = rows.filter(({ price }) => price !== null);
  const total = priced.reduce((sum, { price }) => sum + (price ?? 0), 0);
  const sheets = [...new Set(parts.pieces.filter(({ flatHeight }) => flatHeight !== null).map(({ section }) => section))].map(parseSheet).filter((sheet) => sheet !== null);
  const named = (from: 'gauge-table' | 'density'): string => sheets.filter(({ weightFrom }) => weightFrom === from).map(({ name }) => name).join(', ');
  const unused = unusedPrices(brief.shop.prices, new Set(rows.flatMap(({ item, section }) => [item, section])));
  const { left } = coatedArea(brief, parts);
  const bought = rows.filter(({ item, unit }) => unit !== 'ft' && unit !== 'm' && item !== '');
  return [
    priced.length === 0 ? say('bill.no-prices') : say('bill.total', { total: total.toFixed(2), without: bought.length - priced.length }),
    say('bill.weight-net', { weight: parts.pieces.reduce((sum, { weight }) => sum + weight, 0).toFixed(1) }),
    say('bill.net'),
    ...(premix(rows) ? [say(pricedPremix(brief, rows) === null ? 'bill.by-concrete' : 'bill.by-premix')] : []),
    ...(named('gauge-table') === '' ? [] : [say('bill.gauge', { sheets: named('gauge-table') })]),
    ...(named('density') === '' ? [] : [say('bill.density', { sheets: named('density') })]),
    ...(brief.shop.coating === 'bare' ? [] : [say('bill.area', { left: left.length === 0 ? say('term.none') : left.join(', ') })]),
    ...(unused.length === 0 ? [] : [say('bill.unused', { names: unused.join(', ') })]),
  ];
}

function noteBlock(page: Page, title: string, lines: readonly string[]): Block {
  const width = Math.min(page.room.width, 70 * page.kit.h);
  const height = noteHeight(page.kit, title, lines, width);
  return { width, height, label: title, place: (x, y) => ({ notes: [{ title, lines, at: sheetPoint(x, y + height), width }] }) };
}
