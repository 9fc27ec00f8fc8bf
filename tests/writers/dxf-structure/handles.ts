/** Handles are unique and under the seed; every pointer and every owner is there, and is the right one. */
import { headerOf, namesIn } from './header.ts';
import { type Dxf, type Item, handleOf, itemsOf, valueOf, where } from './items.ts';
import { isPointer } from './tags.ts';

const EDGES = new Set(['ENDTAB', 'CLASS']);

export function checkHandles(file: Dxf): string[] {
  const out: string[] = [];
  const all = ['TABLES', 'BLOCKS', 'ENTITIES', 'OBJECTS'].flatMap((section) => itemsOf(file, section)).filter((item) => !EDGES.has(item.type));
  const byHandle = new Map<string, Item>();
  const seed = parseInt(headerOf(file).get('$HANDSEED')?.[0]?.value ?? '0', 16);
  for (const item of all) {
    const handle = handleOf(item);
    if (handle === null || handle === '0') out.push(`${where(item)} has no handle`);
    else if (byHandle.has(handle)) out.push(`${where(item)} has handle ${handle} a second time`);
    else if (parseInt(handle, 16) >= seed) out.push(`${where(item)}: handle ${handle} is not under the seed`);
    byHandle.set(handle ?? '', item);
  }
  for (const item of all) {
    for (const tag of item.tags) {
      if (isPointer(tag.code) && tag.value !== '0' && !byHandle.has(tag.value)) out.push(`${where(item)}: group ${String(tag.code)} points at nothing: ${tag.value}`);
    }
    out.push(...wrongOwner(file, item, byHandle));
  }
  return out;
}

function wrongOwner(file: Dxf, item: Item, byHandle: ReadonlyMap<string, Item>): string[] {
  const owner = valueOf(item, 330);
  if (owner === null) return [`${where(item)} has no owner`];
  const found = byHandle.get(owner);
  const wrong = [`${where(item)}: wrong owner ${owner}`];
  if (item.type === 'TABLE') return owner === '0' ? [] : wrong;
  if (item.section === 'TABLES') return found?.type === 'TABLE' && valueOf(found, 2) === item.within ? [] : wrong;
  if (item.section === 'OBJECTS') return owner === '0' || found?.type.includes('DICTIONARY') === true ? [] : wrong;
  const space = item.section === 'BLOCKS' ? item.within : valueOf(item, 67) === '1' ? '*Paper_Space' : '*Model_Space';
  const right = found?.type === 'BLOCK_RECORD' && valueOf(found, 2) === space && namesIn(file, 'BLOCK_RECORD').has(space.toUpperCase());
  return right ? [] : wrong;
}
