/** A sheet as a DXF drawing of version AC1015, after the published DXF reference. */
import { type Font } from '../../drafting/font.ts';
import { type Sheet } from '../../drafting/primitives.ts';
import { blocksSection } from './blocks.ts';
import { classesSection } from './classes.ts';
import { startDrawing } from './drawing.ts';
import { entitiesSection } from './entities.ts';
import { headerSection } from './header.ts';
import { objectsSection } from './objects.ts';
import { tablesSection } from './tables.ts';

/**
 * Writes a sheet as a DXF. One unit is an inch of steel, or a millimeter where the sheet is metric, at the sheet's own scale; a view
 * at another scale is drawn as large as on paper and its dimensions read true by their style. The same sheet gives the same text.
 * Throws on what no drawing may hold: a figure that is not finite, a radius of nothing, a dimension in a view that is not there.
 */
export function writeDxf(sheet: Sheet, font: Font): string {
  const drawing = startDrawing(sheet, font);
  classesSection(drawing.tags);
  tablesSection(drawing);
  blocksSection(drawing);
  entitiesSection(drawing);
  objectsSection(drawing);
  drawing.tags.put(0, 'EOF');
  const header = headerSection(sheet, drawing.units, drawing.dimStyles.main.name, drawing.handles.seed());
  return `${[...header, ...drawing.tags.lines].join('\n')}\n`;
}
