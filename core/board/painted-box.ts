import { curveBounds, joinBounds, pointBounds, type Bounds } from '../base/bounds.ts';
import { boxBounds } from '../drafting/boxes.ts';
import { boxOf, type Kit } from '../drafting/kit.ts';
import { strokesOf, type Primitive, type Stroke } from '../drafting/primitives.ts';
import { type BoardPicture } from './types.ts';

/** The box round everything that is drawn; at the origin and of no size where nothing is. */
export function paintedBox(kit: Kit, primitives: readonly Primitive[]): BoardPicture['box'] {
  const strokes = strokesOf(primitives);
  if (strokes.length === 0) return { x: 0, y: 0, width: 0, height: 0 };
  const { left, bottom, right, top } = joinBounds(strokes.map((stroke) => strokeBounds(kit, stroke)));
  return { x: left, y: bottom, width: right - left, height: top - bottom };
}

function strokeBounds(kit: Kit, stroke: Stroke): Bounds {
  switch (stroke.kind) {
    case 'line':
      return pointBounds([stroke.a, stroke.b]);
    case 'arc':
      return curveBounds(stroke);
    case 'circle':
    case 'dot': {
      const { center: { x, y }, radius } = stroke;
      return { left: x - radius, bottom: y - radius, right: x + radius, top: y + radius };
    }
    case 'fill':
      return pointBounds(stroke.points);
    case 'text': {
      const { x, y, width, height } = boxBounds(boxOf(kit, stroke));
      return { left: x, bottom: y, right: x + width, top: y + height };
    }
  }
}
