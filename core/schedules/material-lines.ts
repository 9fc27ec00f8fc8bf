import { type Brief } from '../brief/types.ts';
import { type Layout } from '../layout/index.ts';
import { type Parts } from '../parts/index.ts';
import { concreteRows } from './concrete.ts';
import { hardwareRows } from './hardware.ts';
import { type MaterialLine, materialRows } from './materials.ts';
import { postHoleRows } from './post-hole-concrete.ts';
import { weldMaterialRows, type WeldRow, weldRows } from './welds/index.ts';

/** What the facility is made of: steel and timber net of the pieces, bought parts, concrete, what the welds take. */
export const materialLines = (brief: Brief, layout: Layout, parts: Parts, welds: readonly WeldRow[] = weldRows(brief, layout, parts)): readonly MaterialLine[] =>
  [...materialRows(brief, parts), ...hardwareRows(brief, parts), ...concreteRows(brief, layout), ...postHoleRows(brief, layout), ...weldMaterialRows(brief, welds)];
