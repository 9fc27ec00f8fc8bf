import { type Knapsack } from './best-pattern.ts';

const NODES = 4_000_000;

/**
 * Every pattern of a bar that is worth at least `least` and leaves no more than `spare` of its room, or null where there are more than
 * `limit` or the search is too long. Sizes are taken in the order of value for room, a branch given up where even a filling without
 * whole pieces is worth less, or all that is left to take fills too little.
 */
export function allPatterns({ sizes, values, most, room }: Knapsack, least: number, spare: number, limit: number): readonly (readonly number[])[] | null {
  const order = sizes.map((_, index) => index).filter((index) => sizes[index]! <= room)
    .sort((a, b) => values[b]! / sizes[b]! - values[a]! / sizes[a]! || sizes[b]! - sizes[a]!);
  const counts = sizes.map(() => 0);
  const found: number[][] = [];
  let nodes = 0;
  const atMost = (at: number, left: number): number => {
    let sum = 0;
    let rest = left;
    for (let k = at; k < order.length && rest > 0; k += 1) {
      const index = order[k]!;
      const taken = Math.min(most[index]!, rest / sizes[index]!);
      sum += taken * Math.max(0, values[index]!);
      rest -= taken * sizes[index]!;
    }
    return sum;
  };
  const rest = order.map((_, at) => order.slice(at).reduce((sum, index) => sum + most[index]! * sizes[index]!, 0));
  const search = (at: number, left: number, value: number): boolean => {
    nodes += 1;
    if (nodes > NODES || found.length > limit) return false;
    if (value + atMost(at, left) < least) return true;
    if (left - (rest[at] ?? 0) > spare) return true;
    if (at === order.length) {
      found.push([...counts]);
      return true;
    }
    const index = order[at]!;
    for (let count = Math.min(most[index]!, Math.floor(left / sizes[index]!)); count >= 0; count -= 1) {
      counts[index] = count;
      if (!search(at + 1, left - count * sizes[index]!, value + count * values[index]!)) return false;
    }
    counts[index] = 0;
    return true;
  };
  return search(0, room, 0) ? found : null;
}
