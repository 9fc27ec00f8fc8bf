import { type Vec } from '../../base/points.ts';

/** Points of which the leftmost, of those the lowest, is taken first. */
export interface PointHeap {
  first(): Vec | null;
  add(point: Vec): void;
  dropFirst(): void;
}

const before = (a: Vec, b: Vec): boolean => a.x < b.x || (a.x === b.x && a.y < b.y);

/** An empty heap. */
export function pointHeap(): PointHeap {
  const list: Vec[] = [];
  const swap = (i: number, j: number): void => {
    const kept = list[i]!;
    list[i] = list[j]!;
    list[j] = kept;
  };
  return {
    first: () => list[0] ?? null,
    add: (point) => {
      let i = list.push(point) - 1;
      while (i > 0) {
        const up = (i - 1) >> 1;
        if (!before(list[i]!, list[up]!)) return;
        swap(i, up);
        i = up;
      }
    },
    dropFirst: () => {
      const last = list.pop();
      if (last === undefined || list.length === 0) return;
      list[0] = last;
      for (let i = 0; ;) {
        let least = i;
        for (const next of [2 * i + 1, 2 * i + 2]) if (next < list.length && before(list[next]!, list[least]!)) least = next;
        if (least === i) return;
        swap(i, least);
        i = least;
      }
    },
  };
}
