import { type Vec } from '../../../../core/base/points.ts';
import { type BoardPicture } from '../../../../core/board/types.ts';
import { strokesOf } from '../../../../core/drafting/primitives.ts';

/** From one place on a text to the next, screen inches: closer than what keeps clear of them is wide. */
const STEP = 0.3;

/** Places along the texts of a picture, in plan inches: what is put on the sheet keeps clear of them. */
export function wordPlaces({ primitives, scale }: BoardPicture): readonly Vec[] {
  return strokesOf(primitives).flatMap((stroke) => {
    if (stroke.kind !== 'text') return [];
    const { at, anchor, width, height, rotation } = stroke;
    const from = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
    const count = Math.max(1, Math.ceil(width / STEP));
    const [cos, sin] = [Math.cos(rotation), Math.sin(rotation)];
    return Array.from({ length: count + 1 }, (_, i) => {
      const along = from + (width * i) / count;
      return { x: (at.x + along * cos - (height / 2) * sin) / scale, y: (at.y + along * sin + (height / 2) * cos) / scale };
    });
  });
}
