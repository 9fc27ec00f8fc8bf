/**
 * Places texts along a line as near as can be to where each belongs, in the same order, without touching.
 * `anchors` ascending, `sizes` how much of the line each takes; both in paper inches. Returns the middles. They may run past the
 * ends of `range`, evenly, only where all of them together are longer than it.
 * Method: pool adjacent violators on the anchors less the sizes before them (least squares under an order).
 */
export function spread(anchors: readonly number[], sizes: readonly number[], range: readonly [number, number]): number[] {
  const shifts: number[] = [];
  let before = 0;
  sizes.forEach((size, i) => {
    shifts.push(before + size / 2);
    before += size;
    if (i > 0 && anchors[i]! < anchors[i - 1]! - 1e-9) throw new Error(`anchors must ascend: ${String(anchors[i])}`);
  });
  const total = before;
  const pools: { sum: number; count: number }[] = [];
  anchors.forEach((anchor, i) => {
    pools.push({ sum: anchor - shifts[i]!, count: 1 });
    while (pools.length > 1) {
      const last = pools[pools.length - 1]!;
      const prior = pools[pools.length - 2]!;
      if (prior.sum / prior.count <= last.sum / last.count) break;
      pools.splice(-2, 2, { sum: prior.sum + last.sum, count: prior.count + last.count });
    }
  });
  const slack = range[1] - range[0] - total;
  const low = slack >= 0 ? range[0] : range[0] + slack / 2;
  const high = slack >= 0 ? range[1] - total : low;
  const out: number[] = [];
  for (const pool of pools) {
    const start = Math.min(high, Math.max(low, pool.sum / pool.count));
    for (let i = 0; i < pool.count; i += 1) out.push(start + shifts[out.length]!);
  }
  return out;
}
