import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { planCuts, type CutPlan, type CuttingJob, type Steps } from '../../core/shop/cutting/index.ts';
import { type LinearSolver } from '../../core/shop/linear-solver.ts';
import { createSolver } from '../../electron/solver/highs.ts';
import { jobOf, triplets } from '../support/known-cuts.ts';

let solve: LinearSolver;
beforeAll(async () => { solve = await createSolver(); });

const steps = (value: number): Steps => value as Steps;
function last(job: CuttingJob): { readonly plan: CutPlan; readonly told: readonly CutPlan[] } {
  const told: CutPlan[] = [];
  const plans = planCuts(job, solve);
  for (;;) {
    const next = plans.next();
    if (next.done !== true) told.push(next.value);
    else if ('kind' in next.value) throw new Error(next.value.kind);
    else return { plan: next.value, told };
  }
}

/** What must be true of any plan, worked out anew from its cuts. */
function breaches(job: CuttingJob, plan: CutPlan): string[] {
  const out: string[] = [];
  const cut = new Map<string, number>();
  for (const [index, bar] of plan.bars.entries()) {
    const where = `bar ${String(index + 1)}`;
    if (!job.stock.some((stock) => stock.length === bar.stock)) out.push(`${where}: no such stock`);
    if (bar.cuts.length === 0) out.push(`${where}: nothing is cut from it`);
    const pieces = bar.cuts.reduce((sum, piece) => sum + piece.length, 0);
    const kerfs = bar.cuts.reduce((sum, piece) => sum + piece.kerf, 0);
    if (pieces + kerfs + bar.drop !== bar.stock) out.push(`${where}: pieces, kerf and drop are not the bar`);
    if (bar.drop < 0) out.push(`${where}: overfull`);
    let at = 0;
    for (const piece of bar.cuts) {
      at += piece.length;
      const room = bar.stock - at;
      if (piece.kerf !== Math.min(job.kerf, room)) out.push(`${where}: the saw takes ${String(piece.kerf)}`);
      at += piece.kerf;
      cut.set(`${piece.mark} ${String(piece.length)}`, (cut.get(`${piece.mark} ${String(piece.length)}`) ?? 0) + 1);
    }
  }
  const needed = new Map<string, number>();
  for (const { mark, length, quantity } of job.needs) {
    if (quantity > 0) needed.set(`${mark} ${String(length)}`, (needed.get(`${mark} ${String(length)}`) ?? 0) + quantity);
  }
  if (JSON.stringify([...cut].sort()) !== JSON.stringify([...needed].sort())) out.push('what is cut is not what is needed');
  if (plan.bars.length < plan.atLeast) out.push(`${String(plan.bars.length)} bars, and at least ${String(plan.atLeast)}`);
  return out;
}

describe('known best answers', () => {
  // Roll 5600: cutting-stock example, best 73 rolls, LP bound 72.917 (read); the other three by the same bound, worked out.
  it.each([
    ['5600', [[1380, 22], [1520, 25], [1560, 12], [1710, 14], [1820, 18], [1880, 18], [1930, 20], [2000, 10], [2050, 12], [2100, 14], [2140, 16], [2150, 18], [2200, 20]], 5600, 73],
    ['100', [[45, 97], [36, 610], [31, 395], [14, 211]], 100, 453],
    ['6450', [[677, 10], [756, 40], [1746, 33], [1876, 10]], 6450, 18],
    ['22', [[7, 110], [5, 120], [3, 80]], 22, 74],
  ] as const)('roll %s', (_, sizes, stock, best) => {
    const { plan } = last(jobOf(sizes, [stock]));
    expect(plan.bars.length).toBe(best);
    expect(plan.atLeast).toBe(best);
    expect(breaches(jobOf(sizes, [stock]), plan)).toEqual([]);
  });

  it.each(triplets())('%s', (_, sizes) => {
    expect(sizes.length).toBe(60);
    const job = jobOf(sizes.map((size) => [size, 1] as const), [1000]);
    const { plan } = last(job);
    expect(plan.bars.length).toBe(20);
    expect(plan.atLeast).toBe(20);
    expect(plan.bars.every((bar) => bar.drop === 0)).toBe(true);
    expect(breaches(job, plan)).toEqual([]);
  });
});

describe('any list of pieces', () => {
  const aJob = fc.record({
    sizes: fc.array(fc.tuple(fc.integer({ min: 40_000, max: 2_400_000 }), fc.integer({ min: 1, max: 9 })), { minLength: 1, maxLength: 7 }),
    stock: fc.uniqueArray(fc.constantFrom(2_400_000, 2_520_000, 2_880_000, 4_800_000), { minLength: 1, maxLength: 3 }),
    kerf: fc.constantFrom(0, 1250, 6250),
  });

  it('is cut as needed from bars that are never overfull, with no more of them than longest-first', () => {
    fc.assert(fc.property(aJob, ({ sizes, stock, kerf }) => {
      const job = jobOf(sizes, stock, kerf);
      const { plan, told } = last(job);
      expect(breaches(job, plan)).toEqual([]);
      for (const one of told) expect(breaches(job, one)).toEqual([]);
      // Longest-first is the first that is told.
      expect(plan.bars.length).toBeLessThanOrEqual(told[0]?.bars.length ?? 0);
      for (let k = 1; k < told.length; k += 1) expect(told[k]!.bars.length).toBeLessThanOrEqual(told[k - 1]!.bars.length);
    }), { seed: 11, numRuns: 40 });
  });

  it('has the bound that trying every way gives, where there are few pieces', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 10, max: 90 }), { minLength: 1, maxLength: 8 }), fc.constantFrom(0, 3), (sizes, kerf) => {
      const job = jobOf(sizes.map((size) => [size, 1] as const), [100], kerf);
      const { plan } = last(job);
      const best = fewestByTrying(sizes, 100, kerf);
      expect(plan.bars.length).toBe(best);
      expect(plan.atLeast).toBe(best);
    }), { seed: 12, numRuns: 60 });
  });
});

/** Every way of putting pieces on bars, one piece after another. */
function fewestByTrying(sizes: readonly number[], bar: number, kerf: number): number {
  let best = sizes.length;
  const place = (at: number, rooms: readonly number[]): void => {
    if (rooms.length >= best && at < sizes.length) return;
    const size = sizes[at];
    if (size === undefined) {
      best = Math.min(best, rooms.length);
      return;
    }
    const takes = size + kerf;
    rooms.forEach((room, index) => { if (room >= takes) place(at + 1, rooms.with(index, room - takes)); });
    place(at + 1, [...rooms, bar + kerf - takes]);
  };
  place(0, []);
  return best;
}

describe('what can be bought', () => {
  it('is chosen by price where every length has one', () => {
    // 20 pieces of 100: two fit 240 at 30, three fit 300 at 36. By hand: 6 bars of 300 and 1 of 240 cost 246; seven of 300 cost 252.
    const job: CuttingJob = { ...jobOf([[100, 20]], [240, 300]), stock: [{ length: steps(240), price: 30, count: null }, { length: steps(300), price: 36, count: null }] };
    const { plan } = last(job);
    expect(plan.cost).toEqual({ total: 246, atLeast: 246 });
    expect(breaches(job, plan)).toEqual([]);
  });

  it('is what stands on the rack, and no more', () => {
    const job: CuttingJob = { ...jobOf([[100, 5]], [300, 240]), stock: [{ length: steps(300), price: null, count: 1 }, { length: steps(240), price: null, count: 1 }] };
    expect(last(job).plan.bars.map((bar) => bar.stock)).toEqual([300, 240]);
    const more = planCuts({ ...job, needs: [{ mark: 'R1', length: steps(100), quantity: 6 }] }, solve);
    expect(more.next()).toEqual({ done: true, value: { kind: 'rack-empty' } });
  });

  it('is too short for a piece, and the piece is named', () => {
    expect(planCuts(jobOf([[301, 1]], [300]), solve).next()).toEqual({ done: true, value: { kind: 'too-long', mark: 'R1', length: 301, longest: 300 } });
  });

  it('takes a piece as long as itself without a cut', () => {
    const { plan } = last(jobOf([[300, 1]], [300], 5));
    expect(plan.bars).toEqual([{ from: 0, stock: 300, cuts: [{ mark: 'R1', length: 300, kerf: 0 }], drop: 0 }]);
  });
});
