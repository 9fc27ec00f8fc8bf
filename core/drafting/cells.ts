/** The cells of a grid over the paper that a box or a line lies in, as keys: what shares no cell need not be tried. */
import { type Rect } from './boxes.ts';

/** Side of a cell, paper inches: about the size of a text. */
const CELL = 0.5;
/** Farther off than this, paper inches, all is one cell: a figure that is lost does not fill the memory. */
const FARTHEST = 16_000;
/** Rounding, paper inches, by which a line may stand over the edge of a cell. */
const EDGE = 1e-9;

const cellOf = (value: number): number => Math.floor(Math.max(-FARTHEST, Math.min(FARTHEST, value)) / CELL);
const keyOf = (i: number, j: number): number => i * 65_536 + j;

/** Writes the keys of the cells that a box touches into `keys`, from its start; returns how many. */
export function cellsIn(bounds: Rect, keys: number[]): number {
  const right = cellOf(bounds.x + bounds.width);
  const low = cellOf(bounds.y);
  const high = cellOf(bounds.y + bounds.height);
  let count = 0;
  for (let i = cellOf(bounds.x); i <= right; i += 1) {
    for (let j = low; j <= high; j += 1) keys[count++] = keyOf(i, j);
  }
  return count;
}

/** The same for the cells that a line passes through: column by column, so that a long slanting line does not fill its whole box. */
export function cellsAlong(ax: number, ay: number, bx: number, by: number, keys: number[]): number {
  if (ax > bx) return cellsAlong(bx, by, ax, ay, keys);
  const left = cellOf(ax);
  const right = cellOf(bx);
  const slope = left === right ? 0 : (by - ay) / (bx - ax);
  let count = 0;
  for (let i = left; i <= right; i += 1) {
    const y0 = i === left ? ay : ay + (i * CELL - ax) * slope;
    const y1 = i === right ? by : ay + ((i + 1) * CELL - ax) * slope;
    const high = cellOf(Math.max(y0, y1) + EDGE);
    for (let j = cellOf(Math.min(y0, y1) - EDGE); j <= high; j += 1) keys[count++] = keyOf(i, j);
  }
  return count;
}
