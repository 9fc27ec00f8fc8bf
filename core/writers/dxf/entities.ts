/** ENTITIES section: everything in the model. */
import { type Drawing } from './drawing.ts';
import { dimensionEntity, hasEntity } from './dimension.ts';
import { type Place } from './entity.ts';
import { strokeEntity } from './stroke.ts';

export function entitiesSection(drawing: Drawing): void {
  const { tags, units, handles, fixed, sheet, dimStyles } = drawing;
  const place: Place = { tags, units, handles, owner: fixed.modelRecord };
  const blocks = drawing.pictures.map((picture) => picture.block).values();
  tags.put(0, 'SECTION');
  tags.put(2, 'ENTITIES');
  for (const item of sheet.primitives) {
    if (item.kind === 'dimension' && hasEntity(item)) {
      dimensionEntity(place, item, blocks.next().value ?? '', dimStyles.of(item.view).name);
    } else if (item.kind === 'dimension' || item.kind === 'callout') {
      for (const stroke of item.strokes) strokeEntity(place, stroke);
    } else {
      strokeEntity(place, item);
    }
  }
  tags.put(0, 'ENDSEC');
}
