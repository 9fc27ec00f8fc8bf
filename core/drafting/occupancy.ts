/** What already stands on the paper, in a grid, so that a new text or leader can be tried against it quickly. */
import { type TurnedBox, boxBounds, boxesMeet, lineMeetsBox } from './boxes.ts';
import { cellsAlong, cellsIn } from './cells.ts';
import { type OfLine, makeLineGrid } from './line-grid.ts';

export interface Occupancy {
  /** A text: nothing may touch it. */
  addBox(box: TurnedBox): void;
  /** A dimension, extension or leader line, arrowhead or border: no text may touch it. */
  readonly addLine: OfLine<void>;
  /** Linework of steel: text keeps off it where it can. */
  readonly addSteel: OfLine<void>;
  /** Whether a text in this box would touch a text or a line. */
  blocked(box: TurnedBox): boolean;
  /** Whether a line would touch a text. */
  readonly crossesText: OfLine<boolean>;
  /** How many lines of steel a box lies on. */
  steelUnder(box: TurnedBox): number;
  /** How many dimension or leader lines a line crosses. */
  readonly linesCrossed: OfLine<number>;
}

export function makeOccupancy(): Occupancy {
  const boxes = new Map<number, TurnedBox[]>();
  const lines = makeLineGrid();
  const steel = makeLineGrid();
  const keys: number[] = [];
  return {
    addBox: (box) => {
      const count = cellsIn(boxBounds(box), keys);
      for (let k = 0; k < count; k += 1) {
        const cell = boxes.get(keys[k]!);
        if (cell === undefined) boxes.set(keys[k]!, [box]);
        else cell.push(box);
      }
    },
    addLine: lines.add,
    addSteel: steel.add,
    blocked: (box) => {
      const count = cellsIn(boxBounds(box), keys);
      for (let k = 0; k < count; k += 1) {
        const cell = boxes.get(keys[k]!);
        if (cell === undefined) continue;
        for (const other of cell) if (boxesMeet(box, other)) return true;
      }
      return lines.anyIn(box);
    },
    crossesText: (ax, ay, bx, by) => {
      const count = cellsAlong(ax, ay, bx, by, keys);
      for (let k = 0; k < count; k += 1) {
        const cell = boxes.get(keys[k]!);
        if (cell === undefined) continue;
        for (const box of cell) if (lineMeetsBox(ax, ay, bx, by, box)) return true;
      }
      return false;
    },
    steelUnder: steel.countIn,
    linesCrossed: lines.countCrossed,
  };
}
