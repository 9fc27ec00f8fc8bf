/** A DXF drawing while it is written. */
import { type Font } from '../../drafting/font.ts';
import { type Sheet } from '../../drafting/primitives.ts';
import { type DimStyles, dimStylesOf } from './dim-styles.ts';
import { type DxfDimension, hasEntity } from './dimension.ts';
import { type Fixed, type Handles, countHandles, fixHandles } from './handles.ts';
import { type Tags, startTags } from './tags.ts';
import { type Units, unitsOf } from './units.ts';

/** A dimension and the nameless block that draws it. */
export interface Picture {
  readonly dimension: DxfDimension;
  readonly block: string;
  readonly record: string;
}

export interface Drawing {
  readonly sheet: Sheet;
  readonly font: Font;
  readonly tags: Tags;
  readonly units: Units;
  readonly handles: Handles;
  readonly fixed: Fixed;
  readonly dimStyles: DimStyles;
  readonly pictures: readonly Picture[];
}

/** Starts a drawing of a sheet: what others point at has its handle and its name from here on. */
export function startDrawing(sheet: Sheet, font: Font): Drawing {
  const handles = countHandles();
  const fixed = fixHandles(handles);
  const dimensions = sheet.primitives.filter((item) => item.kind === 'dimension').filter(hasEntity);
  return {
    sheet,
    font,
    tags: startTags(),
    units: unitsOf(sheet),
    handles,
    fixed,
    dimStyles: dimStylesOf(sheet),
    pictures: dimensions.map((dimension, k) => ({ dimension, block: `*D${String(k + 1)}`, record: handles.next() })),
  };
}
