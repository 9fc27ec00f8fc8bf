/**
 * Holds a DXF file (AC1015) to the structure of the published DXF reference (AutoCAD 2000 DXF Reference: group code ranges, order of
 * sections, subclass markers, handles and owners) and to this project's own contract for drawings. It knows nothing of any writer.
 */
import { checkEntities } from './dxf-structure/entities.ts';
import { checkHandles } from './dxf-structure/handles.ts';
import { checkHeader } from './dxf-structure/header.ts';
import { checkObjects } from './dxf-structure/objects.ts';
import { parseItems } from './dxf-structure/items.ts';
import { checkTables } from './dxf-structure/tables.ts';
import { readTags } from './dxf-structure/tags.ts';

/** Everything that is wrong with a DXF text, a sentence each with its line; none where it is sound. */
export function dxfBreaches(text: string): string[] {
  const { tags, breaches } = readTags(text);
  if (breaches.length > 0) return breaches;
  const file = parseItems(tags);
  if (file.breaches.length > 0) return [...file.breaches];
  return [checkHeader, checkHandles, checkTables, checkEntities, checkObjects].flatMap((check) => check(file));
}
