/** What already stands on the paper, in a grid, so that a new text or leader can be tried against it quickly. */
import { type Rect, type Segment, type TurnedBox, boxBounds, boxesMeet, segmentMeetsBox } from './boxes.ts';

/** Cell of the grid, paper inches: about the size of a text. */
const CELL = 0.5;

export interface Occupancy {
  /** A text: nothing may touch it. */
  addBox(box: TurnedBox): void;
  /** A dimension, extension or leader line, arrowhead or border: no text may touch it. */
  addLine(line: Segment): void;
  /** Linework of steel: text keeps off it where it can. */
  addSteel(line: Segment): void;
  /** Whether a text in this box would touch a text or a line. */
  blocked(box: TurnedBox): boolean;
  /** Whether a line would touch a text. */
  crossesText(line: Segment): boolean;
  /** How many lines of steel a box lies on. */
  steelUnder(box: TurnedBox): number;
  /** How many dimension or leader lines a line crosses. */
  linesCrossed(line: Segment): number;
}

export function makeOccupancy(): Occupancy {
  const boxes = makeGrid<TurnedBox>();
  const lines = makeGrid<Segment>();
  const steel = makeGrid<Segment>();
  return {
    addBox: (box) => {
      boxes.add(boxBounds(box), box);
    },
    addLine: (line) => {
      lines.addAlong(line, line);
    },
    addSteel: (line) => {
      steel.addAlong(line, line);
    },
    blocked: (box) => {
      const bounds = boxBounds(box);
      return boxes.some(bounds, (other) => boxesMeet(box, other)) || lines.some(bounds, (line) => segmentMeetsBox(line, box));
    },
    crossesText: (line) => boxes.some(lineBounds(line), (box) => segmentMeetsBox(line, box)),
    steelUnder: (box) => steel.count(boxBounds(box), (line) => segmentMeetsBox(line, box)),
    linesCrossed: (line) => lines.count(lineBounds(line), (other) => segmentsCross(line, other)),
  };
}

const lineBounds = ({ a, b }: Segment): Rect => ({
  x: Math.min(a.x, b.x),
  y: Math.min(a.y, b.y),
  width: Math.abs(a.x - b.x),
  height: Math.abs(a.y - b.y),
});

function segmentsCross(p: Segment, q: Segment): boolean {
  const side = (s: Segment, x: number, y: number): number => (s.b.x - s.a.x) * (y - s.a.y) - (s.b.y - s.a.y) * (x - s.a.x);
  return (
    side(p, q.a.x, q.a.y) * side(p, q.b.x, q.b.y) < 0 && side(q, p.a.x, p.a.y) * side(q, p.b.x, p.b.y) < 0
  );
}

interface Grid<T> {
  add(bounds: Rect, item: T): void;
  addAlong(line: Segment, item: T): void;
  some(bounds: Rect, test: (item: T) => boolean): boolean;
  count(bounds: Rect, test: (item: T) => boolean): number;
}

function makeGrid<T>(): Grid<T> {
  const cells = new Map<number, T[]>();
  const key = (i: number, j: number): number => i * 65536 + j;
  const put = (i: number, j: number, item: T): void => {
    const at = key(i, j);
    const cell = cells.get(at);
    if (cell === undefined) cells.set(at, [item]);
    else if (cell[cell.length - 1] !== item) cell.push(item);
  };
  const cellOf = (value: number): number => Math.floor(Math.max(-100, Math.min(200, value)) / CELL) + 1000;
  const each = (bounds: Rect, visit: (cell: readonly T[]) => boolean): void => {
    const i1 = cellOf(bounds.x + bounds.width);
    const j1 = cellOf(bounds.y + bounds.height);
    for (let i = cellOf(bounds.x); i <= i1; i += 1) {
      for (let j = cellOf(bounds.y); j <= j1; j += 1) {
        const cell = cells.get(key(i, j));
        if (cell !== undefined && visit(cell)) return;
      }
    }
  };
  const add = (bounds: Rect, item: T): void => {
    const i1 = cellOf(bounds.x + bounds.width);
    const j1 = cellOf(bounds.y + bounds.height);
    for (let i = cellOf(bounds.x); i <= i1; i += 1) for (let j = cellOf(bounds.y); j <= j1; j += 1) put(i, j, item);
  };
  return {
    add,
    // A long slanting line would fill its whole bounding box: step along it instead.
    addAlong: (line, item) => {
      const steps = Math.max(1, Math.ceil(Math.hypot(line.b.x - line.a.x, line.b.y - line.a.y) / CELL));
      for (let s = 0; s < Math.min(steps, 400); s += 1) {
        const at = (t: number): { x: number; y: number } => ({
          x: line.a.x + (line.b.x - line.a.x) * t,
          y: line.a.y + (line.b.y - line.a.y) * t,
        });
        add(lineBounds({ a: at(s / steps), b: at((s + 1) / steps) }), item);
      }
    },
    some: (bounds, test) => {
      let found = false;
      each(bounds, (cell) => {
        found = cell.some(test);
        return found;
      });
      return found;
    },
    count: (bounds, test) => {
      const seen = new Set<T>();
      each(bounds, (cell) => {
        for (const item of cell) if (!seen.has(item) && test(item)) seen.add(item);
        return false;
      });
      return seen.size;
    },
  };
}
