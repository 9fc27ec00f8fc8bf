/** How every entity opens: type, handle, owner, layer, and what of its pen differs from the layer's. */
import { type LayerName, type Pen } from '../../drafting/primitives.ts';
import { type Handles } from './handles.ts';
import { LAYER_LOOK, LINETYPE, lineweight } from './styles.ts';
import { type Tags } from './tags.ts';
import { type Units } from './units.ts';

/** Where entities are written: into which list, in which units, owned by which BLOCK_RECORD. */
export interface Place {
  readonly tags: Tags;
  readonly units: Units;
  readonly handles: Handles;
  readonly owner: string;
}

/** Opens an entity whose lines are as its layer's. */
export function openPlain(place: Place, type: string, layer: LayerName, subclass: string): void {
  open(place, type, layer);
  place.tags.put(100, subclass);
}

/** Opens an entity that is drawn with a pen. */
export function openDrawn(place: Place, type: string, pen: Pen, subclass: string): void {
  open(place, type, pen.layer);
  const look = LAYER_LOOK[pen.layer];
  if (pen.dash !== look.dash) place.tags.put(6, LINETYPE[pen.dash]);
  if (pen.weight !== look.weight) place.tags.put(370, lineweight(pen.weight));
  place.tags.put(100, subclass);
}

function open({ tags, handles, owner }: Place, type: string, layer: LayerName): void {
  tags.put(0, type);
  tags.put(5, handles.next());
  tags.put(330, owner);
  tags.put(100, 'AcDbEntity');
  tags.put(8, layer);
}
