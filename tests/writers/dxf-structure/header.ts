/** Header variables: the ones that a reader needs, each in its own group, and the styles in force. */
import { type Dxf, itemsOf, numberOf, once, valueOf } from './items.ts';
import { type Tag } from './tags.ts';

/** Variables that must be there, with the groups that they take (reference, header section group codes). */
const NEEDED: Readonly<Record<string, readonly number[]>> = {
  $ACADVER: [1], $HANDSEED: [5], $EXTMIN: [10, 20, 30], $EXTMAX: [10, 20, 30], $LIMMIN: [10, 20], $LIMMAX: [10, 20], $INSBASE: [10, 20, 30],
  $INSUNITS: [70], $MEASUREMENT: [70], $DIMSTYLE: [2], $TEXTSTYLE: [7], $CLAYER: [8], $CELTYPE: [6], $LTSCALE: [40], $DWGCODEPAGE: [3],
};

/** Header variables by name. */
export const headerOf = once((file): ReadonlyMap<string, readonly Tag[]> => {
  const out = new Map<string, Tag[]>();
  for (const tag of file.header) {
    if (tag.code === 9) out.set(tag.value, []);
    else [...out.values()].at(-1)?.push(tag);
  }
  return out;
});

const names = once((file) => {
  const out = new Map<string, Set<string>>();
  for (const item of itemsOf(file, 'TABLES')) {
    if (item.type !== item.within) continue;
    const table = out.get(item.type) ?? new Set();
    out.set(item.type, table.add((valueOf(item, 2) ?? '').toUpperCase()));
  }
  return out;
});

/** Names in a table, in capitals, since names are alike whatever their case. */
export const namesIn = (file: Dxf, table: string): ReadonlySet<string> => names(file).get(table) ?? new Set();

export function checkHeader(file: Dxf): string[] {
  const out: string[] = [];
  const header = headerOf(file);
  const value = (name: string, k = 0): string => header.get(name)?.[k]?.value ?? '';
  const order = file.header.filter((tag) => tag.code === 9).map((tag) => tag.value);
  if (new Set(order).size !== order.length) out.push('a header variable stands twice');
  if (order[0] !== '$ACADVER') out.push(`the header begins with ${String(order[0])}, not $ACADVER`);
  for (const [name, codes] of Object.entries(NEEDED)) {
    const found = header.get(name);
    if (found === undefined) out.push(`no ${name}`);
    else if (found.map((tag) => tag.code).join() !== codes.join()) out.push(`${name} has groups ${found.map((tag) => tag.code).join()}`);
  }
  if (value('$ACADVER') !== 'AC1015') out.push(`version ${value('$ACADVER')}`);
  const pair = `${value('$INSUNITS')} ${value('$MEASUREMENT')}`;
  if (pair !== '1 0' && pair !== '4 1') out.push(`$INSUNITS and $MEASUREMENT are ${pair}`);
  for (const k of [0, 1]) if (!(Number(value('$EXTMIN', k)) < Number(value('$EXTMAX', k)))) out.push('extents are empty');
  const inForce: readonly (readonly [string, string])[] = [['$DIMSTYLE', 'DIMSTYLE'], ['$TEXTSTYLE', 'STYLE'], ['$CLAYER', 'LAYER'], ['$CELTYPE', 'LTYPE']];
  for (const [name, table] of inForce) if (!namesIn(file, table).has(value(name).toUpperCase())) out.push(`${name} ${value(name)} is not defined`);
  const classes = itemsOf(file, 'CLASSES');
  if (classes.some((item) => item.type !== 'CLASS' || [1, 2, 3].some((code) => valueOf(item, code) === null) || [90, 280, 281].some((code) => Number.isNaN(numberOf(item, code))))) {
    out.push('a class is not whole');
  }
  return out;
}
