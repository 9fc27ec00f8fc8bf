/** DIMENSION entities: subclasses and points by kind, style and block defined, and their own text only where chains have one. */
import { namesIn } from './header.ts';
import { type Dxf, type Item, itemsOf, numberOf, valueOf, where } from './items.ts';
import { markersWrong, subclasses } from './markers.ts';

const LINEAR = 'AcDbAlignedDimension';

/** By the low three bits of group 70 (reference, common dimension group codes). */
const KINDS: Readonly<Record<number, { readonly markers: readonly string[]; readonly under: string; readonly groups: readonly number[] }>> = {
  0: { markers: [LINEAR, 'AcDbRotatedDimension'], under: LINEAR, groups: [13, 23, 33, 14, 24, 34, 50] },
  1: { markers: [LINEAR], under: LINEAR, groups: [13, 23, 33, 14, 24, 34] },
  3: { markers: ['AcDbDiametricDimension'], under: 'AcDbDiametricDimension', groups: [15, 25, 35, 40] },
  4: { markers: ['AcDbRadialDimension'], under: 'AcDbRadialDimension', groups: [15, 25, 35, 40] },
  5: { markers: ['AcDb3PointAngularDimension'], under: 'AcDb3PointAngularDimension', groups: [13, 23, 33, 14, 24, 34, 15, 25, 35] },
};

export function checkDimension(file: Dxf, item: Item): string[] {
  const kind = KINDS[numberOf(item, 70) & 7];
  if (kind === undefined) return [`${where(item)}: kind ${String(valueOf(item, 70))}`];
  const out = markersWrong(item, ['AcDbEntity', 'AcDbDimension', ...kind.markers]);
  const under = subclasses(item).get(kind.under) ?? [];
  for (const code of kind.groups) if (!under.some((tag) => tag.code === code)) out.push(`${where(item)}: no group ${String(code)} in ${kind.under}`);
  if ((numberOf(item, 70) & 32) === 0) out.push(`${where(item)}: its block is not said to be its own`);
  if (!namesIn(file, 'DIMSTYLE').has((valueOf(item, 3) ?? '').toUpperCase())) out.push(`${where(item)}: dimension style is not defined`);
  const block = valueOf(item, 2) ?? '';
  const content = itemsOf(file, 'BLOCKS').filter((inner) => inner.within === block && inner.type !== 'BLOCK' && inner.type !== 'ENDBLK');
  if (content.length === 0) out.push(`${where(item)}: block ${block} draws nothing`);
  return out;
}
