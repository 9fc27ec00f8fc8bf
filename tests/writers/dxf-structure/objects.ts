/** OBJECTS: the root dictionary first, and in it the two layouts, each with the block record that points back at it. */
import { type Dxf, type Item, handleOf, itemsOf, valueOf, valuesOf, where } from './items.ts';
import { markersWrong } from './markers.ts';

const MARKERS: Readonly<Record<string, readonly string[]>> = {
  DICTIONARY: ['AcDbDictionary'], ACDBDICTIONARYWDFLT: ['AcDbDictionary', 'AcDbDictionaryWithDefault'], ACDBPLACEHOLDER: [],
  LAYOUT: ['AcDbPlotSettings', 'AcDbLayout'], MLINESTYLE: ['AcDbMlineStyle'],
};

const ROOT_NEEDS = ['ACAD_GROUP', 'ACAD_LAYOUT', 'ACAD_MLINESTYLE', 'ACAD_PLOTSTYLENAME'];

export function checkObjects(file: Dxf): string[] {
  const objects = itemsOf(file, 'OBJECTS');
  const byHandle = new Map(objects.map((item) => [handleOf(item), item] as const));
  const root = objects[0];
  if (root?.type !== 'DICTIONARY' || valueOf(root, 330) !== '0') return ['the root dictionary is not the first object'];
  const out: string[] = [];
  for (const item of objects) {
    const markers = MARKERS[item.type];
    if (markers === undefined) out.push(`${where(item)} does not belong in a drawing of ours`);
    else out.push(...markersWrong(item, markers));
    if (item !== root && valueOf(item, 330) === '0') out.push(`${where(item)} is owned by nothing`);
    if (item.type.includes('DICTIONARY')) out.push(...entriesWrong(item, byHandle));
  }
  for (const name of ROOT_NEEDS) if (!valuesOf(root, 3).includes(name)) out.push(`the root dictionary has no ${name}`);
  return [...out, ...layoutsWrong(file, objects, root, byHandle)];
}

/** A dictionary owns what it names. */
function entriesWrong(item: Item, byHandle: ReadonlyMap<string | null, Item>): string[] {
  const names = valuesOf(item, 3);
  const handles = valuesOf(item, 350);
  const out: string[] = [];
  if (names.length !== handles.length || new Set(names).size !== names.length) out.push(`${where(item)}: names and entries are not one for one`);
  for (const handle of handles) {
    const entry = byHandle.get(handle);
    if (entry === undefined || valueOf(entry, 330) !== handleOf(item)) out.push(`${where(item)}: entry ${handle} is not owned by it`);
  }
  return out;
}

function layoutsWrong(file: Dxf, objects: readonly Item[], root: Item, byHandle: ReadonlyMap<string | null, Item>): string[] {
  const out: string[] = [];
  const layouts = objects.filter((item) => item.type === 'LAYOUT');
  const list = byHandle.get(valuesOf(root, 350)[valuesOf(root, 3).indexOf('ACAD_LAYOUT')] ?? '');
  const records = itemsOf(file, 'TABLES').filter((item) => item.type === 'BLOCK_RECORD');
  for (const space of ['*Model_Space', '*Paper_Space']) {
    const record = records.find((item) => valueOf(item, 2) === space);
    const layout = layouts.find((item) => valuesOf(item, 330).at(-1) === (record === undefined ? null : handleOf(record)));
    if (record === undefined || layout === undefined || valueOf(record, 340) !== handleOf(layout)) out.push(`${space} and its layout do not name each other`);
    else if (list === undefined || valueOf(layout, 330) !== handleOf(list)) out.push(`${where(layout)} is not in the list of layouts`);
  }
  if (layouts.length !== 2) out.push(`${String(layouts.length)} layouts`);
  return out;
}
