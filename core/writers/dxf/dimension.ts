/** DIMENSION entities. What is seen is the block of drawn strokes; the points below say what was measured. */
import { type Vec, add, angleOf, dot, leftOf, length, scale, sub, unitAt } from '../../base/points.ts';
import { type Dimension } from '../../drafting/primitives.ts';
import { type Place, openPlain } from './entity.ts';
import { dxfDimensionText } from './text.ts';
import { turnDegrees } from './units.ts';

/** Group 70: what kind it is. */
const KIND = { linear: 0, aligned: 1, diameter: 3, radius: 4, angle: 5 } as const;
/** Added to it: the block belongs to this dimension alone; the text stands where it was put. */
const OWN_BLOCK = 32;
const TEXT_PLACED = 128;
/** Group 71: group 11 is the middle of the text. */
const MIDDLE = 5;

export type DxfDimension = Dimension & { readonly measure: keyof typeof KIND };

/** Whether the format (AC1015) has an entity for a dimension; an arc's length has none and is drawn only. */
export const hasEntity = (dimension: Dimension): dimension is DxfDimension => dimension.measure !== 'arc';

/** Writes a dimension that is drawn by `block` and reads by `style`. Its text is empty, so that it reads what is measured, but in a chain. */
export function dimensionEntity(place: Place, dimension: DxfDimension, block: string, style: string): void {
  const { tags, units } = place;
  const { from, to, measure } = dimension;
  openPlain(place, 'DIMENSION', 'SIZES', 'AcDbDimension');
  tags.put(2, block);
  tags.point(10, units.point(definitionPoint(dimension)));
  tags.point(11, units.point(dimension.textAt));
  tags.put(70, KIND[measure] + OWN_BLOCK + TEXT_PLACED);
  tags.put(71, MIDDLE);
  tags.put(1, dimension.chained ? dxfDimensionText(dimension.text) : '');
  tags.put(3, style);
  switch (measure) {
    case 'linear':
    case 'aligned': {
      tags.put(100, 'AcDbAlignedDimension');
      tags.point(13, units.point(from));
      tags.point(14, units.point(to));
      // Readers measure both kinds along this angle, the aligned kind too, though its two points would do.
      tags.fine(50, turnDegrees(measure === 'linear' ? dimension.rotation : directionOf(dimension)));
      if (measure === 'linear') tags.put(100, 'AcDbRotatedDimension');
      return;
    }
    case 'radius':
    case 'diameter': {
      tags.put(100, measure === 'radius' ? 'AcDbRadialDimension' : 'AcDbDiametricDimension');
      tags.point(15, units.point(to));
      tags.real(40, 0);
      return;
    }
    case 'angle': {
      tags.put(100, 'AcDb3PointAngularDimension');
      tags.point(13, units.point(from));
      tags.point(14, units.point(to));
      tags.point(15, units.point(centerOf(dimension)));
      return;
    }
  }
}

/** Group 10: on the dimension line abreast of the second witness point; a radius's center, a diameter's first end; on the arc of an angle. */
function definitionPoint(dimension: DxfDimension): Vec {
  const { from, to, line, measure } = dimension;
  switch (measure) {
    case 'linear':
    case 'aligned': {
      const along = unitAt(measure === 'linear' ? dimension.rotation : directionOf(dimension));
      const across = leftOf(along);
      return add(to, scale(across, dot(sub(line, to), across)));
    }
    case 'radius':
    case 'diameter':
      return from;
    case 'angle':
      return line;
  }
}

/** The direction in which an aligned dimension is measured. */
function directionOf({ from, to, rotation }: Dimension): number {
  const along = sub(to, from);
  return length(along) > 0 ? angleOf(along) : rotation;
}

function centerOf({ center, text }: Dimension): Vec {
  if (center === null) throw new Error(`an angle has no center: ${text}`);
  return center;
}
