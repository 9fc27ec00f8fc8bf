/** Lines on the paper, each found by the cells that it passes through. Their ends stand in one list of figures: it is read at every trial. */
import { type TurnedBox, boxBounds, lineMeetsBox } from './boxes.ts';
import { cellsAlong, cellsIn } from './cells.ts';

/** What is asked of a line from (ax, ay) to (bx, by). */
export type OfLine<T> = (ax: number, ay: number, bx: number, by: number) => T;

export interface LineGrid {
  readonly add: OfLine<void>;
  readonly anyIn: (box: TurnedBox) => boolean;
  /** How many of the lines enter a box. */
  readonly countIn: (box: TurnedBox) => number;
  /** How many of the lines cross a line. */
  readonly countCrossed: OfLine<number>;
}

export function makeLineGrid(): LineGrid {
  /** ax, ay, bx, by of each line, one after another. */
  const ends: number[] = [];
  const cells = new Map<number, number[]>();
  /** The count in which a line was met last: it is met in several cells and counted once. */
  const counted: number[] = [];
  const keys: number[] = [];
  let counts = 0;
  return {
    add: (ax, ay, bx, by) => {
      const count = cellsAlong(ax, ay, bx, by, keys);
      for (let k = 0; k < count; k += 1) {
        const cell = cells.get(keys[k]!);
        if (cell === undefined) cells.set(keys[k]!, [counted.length]);
        else cell.push(counted.length);
      }
      ends.push(ax, ay, bx, by);
      counted.push(0);
    },
    anyIn: (box) => {
      const count = cellsIn(boxBounds(box), keys);
      for (let k = 0; k < count; k += 1) {
        const cell = cells.get(keys[k]!);
        if (cell === undefined) continue;
        for (const line of cell) if (lineMeetsBox(ends[4 * line]!, ends[4 * line + 1]!, ends[4 * line + 2]!, ends[4 * line + 3]!, box)) return true;
      }
      return false;
    },
    countIn: (box) => {
      const count = cellsIn(boxBounds(box), keys);
      let found = 0;
      counts += 1;
      for (let k = 0; k < count; k += 1) {
        const cell = cells.get(keys[k]!);
        if (cell === undefined) continue;
        for (const line of cell) {
          if (counted[line] === counts) continue;
          counted[line] = counts;
          if (lineMeetsBox(ends[4 * line]!, ends[4 * line + 1]!, ends[4 * line + 2]!, ends[4 * line + 3]!, box)) found += 1;
        }
      }
      return found;
    },
    countCrossed: (ax, ay, bx, by) => {
      const count = cellsAlong(ax, ay, bx, by, keys);
      let found = 0;
      counts += 1;
      for (let k = 0; k < count; k += 1) {
        const cell = cells.get(keys[k]!);
        if (cell === undefined) continue;
        for (const line of cell) {
          if (counted[line] === counts) continue;
          counted[line] = counts;
          if (linesCross(ax, ay, bx, by, ends[4 * line]!, ends[4 * line + 1]!, ends[4 * line + 2]!, ends[4 * line + 3]!)) found += 1;
        }
      }
      return found;
    },
  };
}

function linesCross(ax: number, ay: number, bx: number, by: number, cx: number, cy: number, dx: number, dy: number): boolean {
  return (
    turnTo(ax, ay, bx, by, cx, cy) * turnTo(ax, ay, bx, by, dx, dy) < 0 && turnTo(cx, cy, dx, dy, ax, ay) * turnTo(cx, cy, dx, dy, bx, by) < 0
  );
}

/** Positive where (x, y) lies to the left of the line from a to b. */
const turnTo = (ax: number, ay: number, bx: number, by: number, x: number, y: number): number => (bx - ax) * (y - ay) - (by - ay) * (x - ax);
