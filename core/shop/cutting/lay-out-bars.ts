import { type Cut, type CutBar, type CuttingJob, type Pattern, type Size, type Steps } from './types.ts';

/**
 * Bars with their cuts, longest piece first on each: the longest stock first, and of bars alike those that are fullest. A size's marks
 * are used up in the order in which they were needed.
 */
export function layOutBars(job: CuttingJob, sizes: readonly Size[], patterns: readonly Pattern[]): CutBar[] {
  const marks = sizes.map((size) => job.needs.filter((need) => need.length === size.length).flatMap((need) => Array<string>(need.quantity).fill(need.mark)));
  const next = sizes.map(() => 0);
  return patterns
    .map((pattern) => shortened(job, sizes, pattern))
    .sort((a, b) => job.stock[b.stock]!.length - job.stock[a.stock]!.length || compareCounts(b.counts, a.counts))
    .map(({ stock, counts }) => {
      const { length } = job.stock[stock]!;
      const pieces = counts.flatMap((count, size) =>
        Array.from({ length: count }, () => ({ mark: marks[size]![next[size]!++]!, length: sizes[size]!.length })));
      let left: number = length;
      const cuts = pieces.map(({ mark, length: piece }): Cut => {
        left -= piece;
        const kerf = Math.min(job.kerf, left) as Steps;
        left -= kerf;
        return { mark, length: piece, kerf };
      });
      return { from: stock, stock: length, cuts, drop: left as Steps };
    });
}

/** The same pieces from the shortest stock that takes them and costs no more, where the rack is not counted. */
function shortened(job: CuttingJob, sizes: readonly Size[], pattern: Pattern): Pattern {
  const used = pattern.counts.reduce((sum, count, size) => sum + count * (sizes[size]!.length + job.kerf), 0) - job.kerf;
  const held = job.stock[pattern.stock]!;
  let best = pattern.stock;
  for (const [index, stock] of job.stock.entries()) {
    if (stock.count !== null || stock.length < used || stock.length >= job.stock[best]!.length) continue;
    if (stock.price !== null && held.price !== null && stock.price > held.price) continue;
    best = index;
  }
  return { stock: best, counts: pattern.counts };
}

function compareCounts(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((count, index) => count !== b[index]);
  return at < 0 ? 0 : a[at]! - b[at]!;
}
