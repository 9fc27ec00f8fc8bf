import { type Knapsack, type Packed } from './best-pattern.ts';

/** Cells of one table; beyond it the search of `bestPattern` takes less. */
const CELLS = 6_000_000;

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/**
 * The pattern that is worth most, by a table over all rooms in the greatest step that sizes and room have in common; null where the
 * table would be too large. A size that may be taken often is split into items of 1, 2, 4, … of it.
 */
export function tablePattern({ sizes, values, most, room }: Knapsack): Packed | null {
  const step = sizes.reduce(gcd, 0) || 1;
  const width = Math.floor(room / step) + 1;
  const items: { readonly index: number; readonly times: number; readonly takes: number; readonly worth: number }[] = [];
  sizes.forEach((size, index) => {
    for (let left = most[index]!, times = 1; left > 0 && values[index]! > 0; left -= times, times *= 2) {
      const taken = Math.min(times, left);
      items.push({ index, times: taken, takes: (taken * size) / step, worth: taken * values[index]! });
    }
  });
  if (items.length * width > CELLS) return null;
  const best = new Float64Array(width);
  const taken = new Uint8Array(items.length * width);
  items.forEach(({ takes, worth }, item) => {
    for (let at = width - 1; at >= takes; at -= 1) {
      const value = best[at - takes]! + worth;
      if (value > best[at]! + 1e-12) {
        best[at] = value;
        taken[item * width + at] = 1;
      }
    }
  });
  const counts = sizes.map(() => 0);
  let at = width - 1;
  for (let item = items.length - 1; item >= 0; item -= 1) {
    if (taken[item * width + at] !== 1) continue;
    const { index, times, takes } = items[item]!;
    counts[index]! += times;
    at -= takes;
  }
  const value = counts.reduce((sum, count, index) => sum + count * values[index]!, 0);
  return { counts, value, atMost: value };
}
