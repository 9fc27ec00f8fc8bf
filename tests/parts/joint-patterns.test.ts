import { describe, expect, it } from 'vitest';
import { jointPatterns, type Fits, type Joints } from '../../core/parts/index.ts';
import { seeded } from '../support/random.ts';

/** Every way to cover the bays with pieces that fit. */
function everyRow(bays: number, fits: Fits): readonly Joints[] {
  const rows: Joints[] = [];
  const go = (joints: Joints): void => {
    const at = joints.at(-1)!;
    if (at === bays) rows.push(joints);
    for (let next = at + 1; next <= bays && fits(at, next); next++) go([...joints, next]);
  };
  go([0]);
  return rows;
}

const apart = (a: Joints, b: Joints): boolean => !a.slice(1, -1).some((joint) => b.slice(1, -1).includes(joint));
const inBays = (most: number): Fits => (from, to) => to - from <= most;

describe('the joints of lapped rails', () => {
  it('are none where one piece reaches from end to end', () => {
    expect(jointPatterns(3, inBays(4))).toEqual({ even: [0, 3], odd: [0, 3] });
  });

  it('stand apart in neighboring rows without an extra piece where there is slack', () => {
    expect(jointPatterns(5, inBays(2))).toEqual({ even: [0, 2, 4, 5], odd: [0, 1, 3, 5] });
  });

  it('stand apart for one extra piece in the odd rows where there is none', () => {
    expect(jointPatterns(4, inBays(2))).toEqual({ even: [0, 2, 4], odd: [0, 1, 3, 4] });
  });

  it('are at every post where a piece reaches one bay only: nothing can avoid it', () => {
    expect(jointPatterns(3, inBays(1))).toEqual({ even: [0, 1, 2, 3], odd: [0, 1, 2, 3] });
  });

  it('are as good as the best of every pair of rows, bays equal or not', () => {
    const random = seeded(11);
    for (let i = 0; i < 1500; i++) {
      const bays = random.whole(1, 10);
      const equal = random.between(20, 100);
      const kind = random.whole(0, 2);
      const lengths = Array.from({ length: bays }, (_, bay) => {
        if (kind === 2) return random.between(10, 100);
        const end = bay === 0 || bay === bays - 1;
        return kind === 1 && end ? Math.min(100, equal * random.between(0.5, 1.3)) : equal;
      });
      const fits: Fits = (from, to) => lengths.slice(from, to).reduce((sum, length) => sum + length, 0) <= 100 + 1e-9;
      const rows = everyRow(bays, fits);
      const fewest = Math.min(...rows.map((row) => row.length));
      const least = rows.filter((row) => row.length === fewest);
      // The fewest pieces in the odd rows that stand apart from some row of fewest pieces, one extra at most.
      const best = Math.min(...rows.filter((row) => row.length <= fewest + 1 && least.some((even) => apart(even, row))).map((row) => row.length));
      const { even, odd } = jointPatterns(bays, fits);
      for (const row of [even, odd]) expect(row.slice(1).every((to, j) => fits(row[j]!, to))).toBe(true);
      expect(even.length).toBe(fewest);
      expect([i, apart(even, odd), odd.length]).toEqual(best === Infinity ? [i, false, fewest] : [i, true, best]);
    }
  });
});
