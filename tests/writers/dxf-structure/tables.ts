/** The nine tables: whole, counted, each name once; layers, linetypes and styles refer to what is defined. */
import { namesIn } from './header.ts';
import { type Dxf, type Item, itemsOf, numberOf, valueOf, valuesOf, where } from './items.ts';
import { markersWrong } from './markers.ts';

const TABLES = ['VPORT', 'LTYPE', 'LAYER', 'STYLE', 'VIEW', 'UCS', 'APPID', 'DIMSTYLE', 'BLOCK_RECORD'];

/** What must be in every drawing of ours. */
const NEEDED: Readonly<Record<string, readonly string[]>> = {
  VPORT: ['*ACTIVE'], LTYPE: ['BYBLOCK', 'BYLAYER', 'CONTINUOUS', 'HIDDEN', 'CENTER'], APPID: ['ACAD'],
  LAYER: ['0', 'STEEL', 'HIDDEN', 'CENTER', 'SIZES', 'NOTES', 'MARKS', 'FRAME'], STYLE: ['STANDARD'], DIMSTYLE: ['STANDARD'],
  BLOCK_RECORD: ['*MODEL_SPACE', '*PAPER_SPACE'],
};

const RECORD: Readonly<Record<string, string>> = {
  VPORT: 'AcDbViewportTableRecord', LTYPE: 'AcDbLinetypeTableRecord', LAYER: 'AcDbLayerTableRecord', STYLE: 'AcDbTextStyleTableRecord',
  VIEW: 'AcDbViewTableRecord', UCS: 'AcDbUCSTableRecord', APPID: 'AcDbRegAppTableRecord', DIMSTYLE: 'AcDbDimStyleTableRecord',
  BLOCK_RECORD: 'AcDbBlockTableRecord',
};

/** Lineweights of the reference, hundredths of a millimeter; -1 to -3 are by layer, by block and default. */
export const LINEWEIGHTS = new Set([-3, -2, -1, 0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211]);

export function checkTables(file: Dxf): string[] {
  const items = itemsOf(file, 'TABLES');
  const tables = items.filter((item) => item.type === 'TABLE').map((item) => item.within);
  const out: string[] = [];
  if ([...tables].sort().join() !== [...TABLES].sort().join()) out.push(`tables are ${tables.join()}`);
  for (const table of TABLES) {
    const records = items.filter((item) => item.within === table && item.type !== 'TABLE' && item.type !== 'ENDTAB');
    const head = items.find((item) => item.type === 'TABLE' && item.within === table);
    const names = records.map((item) => (valueOf(item, 2) ?? '').toUpperCase());
    if (head !== undefined && numberOf(head, 70) !== records.length) out.push(`${where(head)} ${table} counts ${String(numberOf(head, 70))} records, has ${String(records.length)}`);
    if (table !== 'VPORT' && new Set(names).size !== names.length) out.push(`table ${table} has a name twice`);
    for (const name of NEEDED[table] ?? []) if (!names.includes(name)) out.push(`table ${table} has no ${name}`);
    const markers = table === 'DIMSTYLE' ? ['AcDbSymbolTable', 'AcDbDimStyleTable'] : ['AcDbSymbolTable'];
    if (head !== undefined) out.push(...markersWrong(head, markers));
    for (const record of records) out.push(...markersWrong(record, ['AcDbSymbolTableRecord', RECORD[table] ?? '']), ...recordWrong(file, record, table));
  }
  return out;
}

function recordWrong(file: Dxf, item: Item, table: string): string[] {
  if (item.type !== table) return [`${where(item)} in table ${table}`];
  const out: string[] = [];
  const say = (what: string): void => { out.push(`${where(item)} ${valueOf(item, 2) ?? ''}: ${what}`); };
  if (item.type === 'LAYER') {
    if (!namesIn(file, 'LTYPE').has((valueOf(item, 6) ?? '').toUpperCase())) say('linetype is not defined');
    if (numberOf(item, 62) !== 7) say(`color ${String(valueOf(item, 62))}: color carries no meaning`);
    if (!LINEWEIGHTS.has(numberOf(item, 370))) say('no such lineweight');
    if (valueOf(item, 390) === null) say('no plot style');
  }
  if (item.type === 'LTYPE') {
    const dashes = valuesOf(item, 49).map(Number);
    if (numberOf(item, 73) !== dashes.length || valuesOf(item, 74).length !== dashes.length) say('dashes are not as many as it says');
    if (Math.abs(dashes.reduce((sum, dash) => sum + Math.abs(dash), 0) - numberOf(item, 40)) > 1e-6) say('dashes are not as long as it says');
  }
  if (item.type === 'DIMSTYLE' && valueOf(item, 2) !== 'STANDARD' && !(numberOf(item, 144) > 0)) say('no factor (144)');
  if (item.type === 'DIMSTYLE' && valueOf(item, 340) === null) say('no text style (340)');
  if (item.type === 'BLOCK_RECORD' && valueOf(item, 340) === null) say('no layout (340)');
  return out;
}
