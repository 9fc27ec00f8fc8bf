import { inches, type Inches } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { printLength } from '../../units/index.ts';
import { type Section } from '../../steel/index.ts';
import { DEFAULTS } from '../defaults.ts';
import { pathText } from '../path-fault.ts';
import { type ProjectFile } from '../schema/project.ts';
import { type RackBars, type RollLimit, type ShopBrief } from '../types.ts';
import { type Filler } from './filler.ts';
import { resolveWelding } from './welding.ts';
import { bySectionName, type SectionEntry } from './section-table.ts';

/** The shop's tables by section, as read. */
export interface ShopTables {
  readonly stock: readonly SectionEntry<readonly Inches[]>[];
  readonly roll: readonly SectionEntry<RollLimit>[];
  readonly rack: readonly SectionEntry<readonly RackEntry[]>[];
}

/** As the file has it. */
export interface RackEntry {
  readonly length: Inches;
  readonly count: number;
  readonly price?: number | undefined;
}

const rackBars = (entries: readonly RackEntry[]): readonly RackBars[] =>
  entries.map(({ length, count, price }) => ({ length, count, price: price ?? null })).sort((a, b) => b.length - a.length);

function sheetSizes(given: readonly (readonly Inches[])[] | undefined, filler: Filler): ShopBrief['sheets'] {
  const pairs = given ?? DEFAULTS.shop.sheets;
  const sizes = pairs.map(([first = 0, second = 0]) => [inches(first), inches(second)] as const);
  if (given === undefined) {
    const print = (length: Inches): string => printLength(length, filler.units, 'inches');
    filler.note('shop.sheets', sizes.map(([a, b]) => say('term.figure-pair', { a: print(a), b: print(b) })).join(', '));
  }
  return sizes;
}

/** The shop, its defaults noted: stock for each section that the fences are built of. */
export function resolveShop(file: ProjectFile, tables: ShopTables, used: readonly Section[], filler: Filler): ShopBrief {
  const shop = file.shop ?? {};
  const { kerf, trim, keepDrop, weldGap, grip, springback, gaugeChord, plateKerf, coating } = DEFAULTS.shop;
  const stock = bySectionName(tables.stock.map(({ section, value }) => ({ section, value: [...new Set(value)].sort((a, b) => a - b) })), used);
  for (const table of ['rack', 'roll', 'prices'] as const) {
    if (shop[table] === undefined) filler.note(`shop.${table}`, say('term.none'));
  }
  for (const name of new Set(used.map((section) => section.name))) {
    if (!(name in stock)) filler.note(pathText(['shop', 'stock', name]), printLength(inches(DEFAULTS.stockLength), filler.units));
  }
  return {
    stock,
    sheets: sheetSizes(shop.sheets, filler),
    rack: bySectionName(tables.rack.map(({ section, value }) => ({ section, value: rackBars(value) })), used),
    kerf: filler.length('shop.kerf', shop.kerf, kerf),
    trim: filler.length('shop.trim', shop.trim, trim),
    keepDrop: filler.length('shop.keepDrop', shop.keepDrop, keepDrop),
    weldGap: filler.length('shop.weldGap', shop.weldGap, weldGap),
    grip: filler.length('shop.grip', shop.grip, grip),
    springback: filler.number('shop.springback', shop.springback, springback),
    gaugeChord: filler.length('shop.gaugeChord', shop.gaugeChord, gaugeChord),
    plateKerf: filler.length('shop.plateKerf', shop.plateKerf, plateKerf),
    coating: filler.word('shop.coating', shop.coating, coating),
    roll: bySectionName(tables.roll, used),
    prices: shop.prices ?? {},
    ...resolveWelding(shop, filler),
  };
}
