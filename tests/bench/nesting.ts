/** A known set of nesting beside longest-first rectangles: length of the strip, density, and how long it took. */
import { contourBox, flatArea } from '../../core/base/flat-curves.ts';
import { moldsOf, nestStrip } from '../../core/shop/nesting/index.ts';
import { onShelves, shapes0, SHAPES_0_WIDTH } from '../support/known-shapes.ts';

const TRIES = 60;

/** Lines for `npm run bench`. */
export function nestingLines(): string {
  const known = shapes0();
  const area = known.reduce((sum, { quantity, shape }) => sum + quantity * flatArea(shape), 0);
  const boxes = known.map(({ shape, quantity }) => {
    const { left, right, low, high } = contourBox(shape.outer);
    return { wide: right - left, high: high - low, count: quantity };
  });
  const from = performance.now();
  const { length } = nestStrip(known.map(({ id, quantity, shape }) => ({ molds: moldsOf(id, shape, [0], []), count: quantity })), SHAPES_0_WIDTH, 0, TRIES);
  const took = performance.now() - from;
  const line = (name: string, long: number): string => `shapes0, ${name}: ${long.toFixed(2)} long, ${((100 * area) / (SHAPES_0_WIDTH * long)).toFixed(1)} % of it used`;
  return [`${line('true shape', length)}, ${String(TRIES)} tries in ${(took / 1000).toFixed(1)} s`, line('longest-first rectangles', onShelves(boxes, SHAPES_0_WIDTH)), `shapes0, no plan is shorter than its area: ${(area / SHAPES_0_WIDTH).toFixed(2)}`].join('\n');
}
