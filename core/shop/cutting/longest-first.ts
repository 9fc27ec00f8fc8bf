import { type CuttingJob, type Pattern, type Size } from './types.ts';

/**
 * The plan that a person makes with a tape: the longest piece still to cut goes on the first bar that has room, else on a new one, the
 * longest stock that there is. null where the rack has too few bars.
 */
export function longestFirst(job: CuttingJob, sizes: readonly Size[]): Pattern[] | null {
  const byLength = job.stock.map((_, index) => index).sort((a, b) => job.stock[b]!.length - job.stock[a]!.length);
  const left = job.stock.map((stock) => stock.count ?? Infinity);
  const bars: { stock: number; counts: number[]; room: number }[] = [];
  for (const [index, size] of sizes.entries()) {
    const takes = size.length + job.kerf;
    for (let n = 0; n < size.quantity; n += 1) {
      let bar = bars.find(({ room }) => room >= takes);
      if (bar === undefined) {
        const stock = byLength.find((at) => left[at]! > 0 && job.stock[at]!.length >= size.length);
        if (stock === undefined) return null;
        left[stock]! -= 1;
        bar = { stock, counts: sizes.map(() => 0), room: job.stock[stock]!.length + job.kerf };
        bars.push(bar);
      }
      bar.counts[index]! += 1;
      bar.room -= takes;
    }
  }
  return bars.map(({ stock, counts }) => ({ stock, counts }));
}
