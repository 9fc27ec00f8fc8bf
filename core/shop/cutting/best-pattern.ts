/** The pattern of one bar that is worth most: a knapsack in which each size may be taken as often as it is needed. */

export interface Knapsack {
  /** What each takes of the room, above 0. */
  readonly sizes: readonly number[];
  readonly values: readonly number[];
  /** How often each may be taken. */
  readonly most: readonly number[];
  readonly room: number;
}

export interface Packed {
  readonly counts: readonly number[];
  readonly value: number;
  /** No pattern is worth more: the value itself where the search came to its end. */
  readonly atMost: number;
}

/** Branches of one search. */
const NODES = 400_000;
const NOISE = 1e-12;

/** Depth first in the order of value for room, a branch given up where even a filling without whole pieces is worth no more. */
export function bestPattern({ sizes, values, most, room }: Knapsack): Packed {
  const order = sizes.map((_, index) => index).filter((index) => (values[index] ?? 0) > NOISE && (sizes[index] ?? 0) <= room)
    .sort((a, b) => values[b]! / sizes[b]! - values[a]! / sizes[a]! || sizes[b]! - sizes[a]!);
  const counts = sizes.map(() => 0);
  let best: readonly number[] = [...counts];
  let bestValue = 0;
  let nodes = 0;
  const bound = (at: number, left: number): number => {
    let sum = 0;
    let rest = left;
    for (let k = at; k < order.length && rest > 0; k += 1) {
      const index = order[k]!;
      const taken = Math.min(most[index]!, rest / sizes[index]!);
      sum += taken * values[index]!;
      rest -= taken * sizes[index]!;
    }
    return sum;
  };
  const root = bound(0, room);
  const search = (at: number, left: number, value: number): void => {
    nodes += 1;
    if (value > bestValue + NOISE) {
      bestValue = value;
      best = [...counts];
    }
    if (at >= order.length || nodes > NODES) return;
    if (value + bound(at, left) <= bestValue + NOISE) return;
    const index = order[at]!;
    for (let count = Math.min(most[index]!, Math.floor(left / sizes[index]!)); count >= 0; count -= 1) {
      counts[index] = count;
      search(at + 1, left - count * sizes[index]!, value + count * values[index]!);
      if (nodes > NODES) break;
    }
    counts[index] = 0;
  };
  search(0, room, 0);
  return { counts: best, value: bestValue, atMost: nodes > NODES ? root : bestValue };
}
