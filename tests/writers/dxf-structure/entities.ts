/** Entities, in the model and in blocks: their subclasses, the groups under each, and figures that can be drawn. */
import { headerOf, namesIn } from './header.ts';
import { type Dxf, type Item, itemsOf, numberOf, valueOf, valuesOf, where } from './items.ts';
import { markersWrong, subclasses } from './markers.ts';
import { checkDimension } from './dimensions.ts';
import { SHAPES } from './shapes.ts';
import { LINEWEIGHTS } from './tables.ts';

export function checkEntities(file: Dxf): string[] {
  const model = itemsOf(file, 'ENTITIES');
  const blocks = itemsOf(file, 'BLOCKS');
  const drawn = [...model, ...blocks.filter((item) => item.type !== 'BLOCK' && item.type !== 'ENDBLK')];
  return [
    ...drawn.flatMap((item) => entityWrong(file, item)),
    ...drawn.flatMap((item) => outside(file, item)),
    ...model.filter((item) => item.type === 'DIMENSION').flatMap((item) => checkDimension(file, item)),
    ...blocksWrong(file, blocks, model),
  ];
}

function entityWrong(file: Dxf, item: Item): string[] {
  const shape = SHAPES[item.type];
  if (shape === undefined) return [`${where(item)} does not belong in a drawing of ours`];
  const out = item.type === 'DIMENSION' ? [] : markersWrong(item, shape.markers);
  const parts = subclasses(item);
  const common = parts.get('AcDbEntity') ?? [];
  if (valuesOf(item, 8).length !== 1 || !common.some((tag) => tag.code === 8)) out.push(`${where(item)}: layer is not once inside AcDbEntity`);
  if ((parts.get('') ?? []).some((tag) => tag.code !== 5 && tag.code !== 330)) out.push(`${where(item)}: something stands before AcDbEntity`);
  if (common.some((tag) => ![8, 6, 62, 370, 67, 48].includes(tag.code))) out.push(`${where(item)}: something else stands inside AcDbEntity`);
  for (const [marker, codes] of Object.entries(shape.groups)) {
    for (const code of codes) if (parts.get(marker)?.some((tag) => tag.code === code) !== true) out.push(`${where(item)}: no group ${String(code)} in ${marker}`);
  }
  if (!namesIn(file, 'LAYER').has((valueOf(item, 8) ?? '').toUpperCase())) out.push(`${where(item)}: layer ${String(valueOf(item, 8))} is not defined`);
  const linetype = valueOf(item, 6);
  if (linetype !== null && !namesIn(file, 'LTYPE').has(linetype.toUpperCase())) out.push(`${where(item)}: linetype ${linetype} is not defined`);
  if (valueOf(item, 370) !== null && !LINEWEIGHTS.has(numberOf(item, 370))) out.push(`${where(item)}: no such lineweight`);
  if (valueOf(item, 62) !== null && numberOf(item, 62) !== 256) out.push(`${where(item)}: has a color of its own`);
  return [...out, ...shape.wrong(item, file).map((what) => `${where(item)}: ${what}`)];
}

/** Every drawn point lies in the extents, to a millionth of the drawing's width. */
function outside(file: Dxf, item: Item): string[] {
  const limit = (name: string): number[] => (headerOf(file).get(name) ?? []).map((tag) => Number(tag.value));
  const [low, high] = [limit('$EXTMIN'), limit('$EXTMAX')];
  const slack = 1e-6 * (high[0] ?? 0);
  const lies = (value: number, k: number): boolean => value >= (low[k] ?? NaN) - slack && value <= (high[k] ?? NaN) + slack;
  const points = SHAPES[item.type]?.points(item) ?? [];
  return points.every(([x, y]) => lies(x, 0) && lies(y, 1)) ? [] : [`${where(item)} lies outside the extents`];
}

/** Blocks come in pairs, each with its record; a nameless one draws one dimension. */
function blocksWrong(file: Dxf, blocks: readonly Item[], model: readonly Item[]): string[] {
  const out: string[] = [];
  const opened = blocks.filter((item) => item.type === 'BLOCK');
  const names = opened.map((item) => valueOf(item, 2) ?? '');
  const records = namesIn(file, 'BLOCK_RECORD');
  if (new Set(names).size !== names.length || names.length !== records.size) out.push('blocks and block records are not one for one');
  for (const name of names) if (!records.has(name.toUpperCase())) out.push(`block ${name} has no record`);
  for (const item of opened) {
    out.push(...markersWrong(item, ['AcDbEntity', 'AcDbBlockBegin']));
    const name = valueOf(item, 2) ?? '';
    if (valueOf(item, 3) !== name) out.push(`${where(item)}: its two names differ`);
    const space = /^\*(Model|Paper)_Space$/.test(name);
    const used = model.filter((entity) => entity.type === 'DIMENSION' && valueOf(entity, 2) === name).length;
    if (!space && (!/^\*D\d+$/.test(name) || numberOf(item, 70) !== 1 || used !== 1)) out.push(`${where(item)} ${name} is not the picture of one dimension`);
    if (space && blocks.some((inner) => inner.within === name && inner.type !== 'BLOCK' && inner.type !== 'ENDBLK')) out.push(`${where(item)} ${name} is not empty`);
  }
  for (const item of blocks.filter((entry) => entry.type === 'ENDBLK')) out.push(...markersWrong(item, ['AcDbEntity', 'AcDbBlockEnd']));
  if (blocks.filter((item) => item.type === 'ENDBLK').length !== opened.length) out.push('a block is not ended');
  return out;
}
