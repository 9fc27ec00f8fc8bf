/** Cutting-stock sets with known best answers. */
import { readFileSync } from 'node:fs';
import { type CuttingJob, type Steps } from '../../core/shop/cutting/index.ts';

const steps = (value: number): Steps => value as Steps;

/** Pieces by length and quantity, from stock of these lengths without limit. */
export const jobOf = (sizes: readonly (readonly [number, number])[], stock: readonly number[], kerf = 0): CuttingJob => ({
  needs: sizes.map(([length, quantity], index) => ({ mark: `R${String(index + 1)}`, length: steps(length), quantity })),
  stock: stock.map((length) => ({ length: steps(length), price: null, count: null })),
  kerf: steps(kerf),
});

/** Falkenauer's triplets, ESICUP/datasets, CC0-1.0: 60 pieces fill 20 bins of 100 with nothing left over. Lengths in tenths. */
export function triplets(): readonly (readonly [name: string, sizes: readonly number[]])[] {
  const lines = readFileSync(new URL('../shop/data/falkenauer_binpack5.txt', import.meta.url), 'utf8').split('\n').map((line) => line.trim()).filter((line) => line !== '');
  const sets = Array.from({ length: Number(lines[0]) }, (_, index) => lines.slice(1 + index * 62, 63 + index * 62));
  return sets.map((set) => [set[0] ?? '', set.slice(2).map((size) => Math.round(Number(size) * 10))] as const);
}
