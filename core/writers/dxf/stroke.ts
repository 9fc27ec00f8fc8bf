/** Strokes as entities: LINE, ARC, CIRCLE, SOLID, LWPOLYLINE, TEXT. */
import { SAME_ANGLE } from '../../base/tolerance.ts';
import { type Stroke } from '../../drafting/primitives.ts';
import { type Place, openDrawn, openPlain } from './entity.ts';
import { textEntity } from './text-entity.ts';
import { turnDegrees } from './units.ts';

type Of<Kind extends Stroke['kind']> = Extract<Stroke, { readonly kind: Kind }>;

/** Writes one stroke. Throws on a radius that is not above zero and on a fill that is not of three or four points. */
export function strokeEntity(place: Place, stroke: Stroke): void {
  switch (stroke.kind) {
    case 'line': {
      openDrawn(place, 'LINE', stroke.pen, 'AcDbLine');
      place.tags.point(10, place.units.point(stroke.a));
      place.tags.point(11, place.units.point(stroke.b));
      return;
    }
    case 'arc': {
      arcEntity(place, stroke);
      return;
    }
    case 'circle': {
      circleEntity(place, stroke);
      return;
    }
    case 'fill': {
      solidEntity(place, stroke);
      return;
    }
    case 'dot': {
      dotEntity(place, stroke);
      return;
    }
    case 'text': {
      textEntity(place, stroke);
      return;
    }
  }
}

/** ARC runs counter-clockwise from its first angle. Less than SAME_ANGLE is nothing, a full turn is a circle: an ARC of equal angles is read as either. */
function arcEntity(place: Place, stroke: Of<'arc'>): void {
  const turn = Math.abs(stroke.sweep);
  if (turn <= SAME_ANGLE) return;
  if (turn >= 2 * Math.PI - SAME_ANGLE) {
    circleEntity(place, { ...stroke, kind: 'circle' });
    return;
  }
  const end = stroke.start + stroke.sweep;
  openDrawn(place, 'ARC', stroke.pen, 'AcDbCircle');
  centerAndRadius(place, stroke);
  place.tags.put(100, 'AcDbArc');
  place.tags.fine(50, turnDegrees(stroke.sweep > 0 ? stroke.start : end));
  place.tags.fine(51, turnDegrees(stroke.sweep > 0 ? end : stroke.start));
}

function circleEntity(place: Place, stroke: Of<'circle'>): void {
  openDrawn(place, 'CIRCLE', stroke.pen, 'AcDbCircle');
  centerAndRadius(place, stroke);
}

function centerAndRadius({ tags, units }: Place, { center, radius }: Of<'circle'> | Of<'arc'>): void {
  if (!(radius > 0)) throw new Error(`radius not above zero: ${String(radius)}`);
  tags.point(10, units.point(center));
  tags.real(40, units.length(radius));
}

/** The corners of a SOLID run 1, 2, 4, 3; a triangle repeats its last one. */
function solidEntity(place: Place, { layer, points }: Of<'fill'>): void {
  const [a, b, c, d] = points;
  if (a === undefined || b === undefined || c === undefined || points.length > 4) {
    throw new Error(`a fill has three or four points, not ${String(points.length)}`);
  }
  openPlain(place, 'SOLID', layer, 'AcDbTrace');
  [a, b, d ?? c, c].forEach((corner, k) => {
    place.tags.point(10 + k, place.units.point(corner));
  });
}

/** A disk as a closed polyline of two half circles at half its radius, as wide as its radius: no hatch, read by all. */
function dotEntity(place: Place, { layer, center, radius }: Of<'dot'>): void {
  if (!(radius > 0)) throw new Error(`radius not above zero: ${String(radius)}`);
  const { tags, units } = place;
  openPlain(place, 'LWPOLYLINE', layer, 'AcDbPolyline');
  tags.put(90, 2);
  tags.put(70, 1);
  tags.real(43, units.length(radius));
  for (const side of [-1, 1]) {
    tags.point2(10, units.point({ x: center.x + (side * radius) / 2, y: center.y }));
    tags.real(42, 1);
  }
}
