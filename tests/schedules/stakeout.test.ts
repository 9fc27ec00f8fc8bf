import { describe, expect, it } from 'vitest';
import { planPoint } from '../../core/base/points.ts';
import { type Brief } from '../../core/brief/types.ts';
import { layOut } from '../../core/layout/index.ts';
import { baselineSide, stakeoutColumns, stakeoutRows, type StakeRow } from '../../core/schedules/index.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { laidOut } from '../support/laid-out.ts';
import { randomBriefObject } from '../support/random-brief-object.ts';

const B = [-310, 190] as const;
const C = [520, -75] as const;
const brief: Brief = makeBrief({ control: { b: planPoint(...B), c: planPoint(...C), note: '' } });
const rowsOf = (each: Brief): readonly StakeRow[] => stakeoutRows(each, laidOut(each));

/** Where two tapes from A (the origin) and B meet, on the side that is told; null where they do not reach each other. */
function twoTapes(a: number, b: number, [bx, by]: readonly [number, number], side: string): { x: number; y: number } {
  const base = Math.hypot(bx, by);
  const along = (a * a - b * b + base * base) / (2 * base);
  const off = Math.sqrt(Math.max(0, a * a - along * along)) * (side === 'left' ? 1 : -1);
  return { x: (bx / base) * along - (by / base) * off, y: (by / base) * along + (bx / base) * off };
}

describe('the stakeout table', () => {
  it('bears the columns of the package contract in its order', () => {
    expect(stakeoutColumns('in').map((column) => column.name)).toEqual(
      ['point', 'kind', 'x', 'y', 'tie_a', 'tie_b', 'hole_diameter', 'hole_depth', 'run', 'side', 'baseline_side', 'tie_c']);
  });

  it('has the control points without holes, then every post once with its hole', () => {
    const rows = rowsOf(brief);
    expect(rows.slice(0, 3).map(({ point, kind, x, y, holeDepth }) => [point, kind, x, y, holeDepth])).toEqual(
      [['A', 'control', 0, 0, null], ['B', 'control', -310, 190, null], ['C', 'control', 520, -75, null]]);
    const { posts } = laidOut(brief);
    expect(rows.slice(3).map(({ kind, x, y, run, side, holeDiameter, holeDepth }) => [kind, x, y, run, side, holeDiameter, holeDepth]))
      .toEqual(posts.map((post) => [post.kind, post.at.x, post.at.y, post.run, post.side, 12, 36]));
    expect(new Set(rows.map((row) => row.point)).size).toBe(rows.length);
    expect(rows.filter((row) => row.kind === 'pivot-post').map(({ point, tieA }) => [point, tieA])).toEqual([['H0', 0]]);
    expect(rows.filter((row) => row.kind === 'corner-post').length).toBe(1);
  });

  it('gives ties that measure from A, B and C to the point', () => {
    for (const row of rowsOf(brief)) {
      expect(row.tieA).toBeCloseTo(Math.hypot(row.x, row.y), 9);
      expect(row.tieB).toBeCloseTo(Math.hypot(row.x - B[0], row.y - B[1]), 9);
      expect(row.tieC).toBeCloseTo(Math.hypot(row.x - C[0], row.y - C[1]), 9);
    }
    expect(rowsOf(makeBrief()).every((row) => row.tieC === null)).toBe(true);
  });

  it('puts every point back where it is, from two tapes and the side of the line', () => {
    let told = { left: 0, right: 0, on: 0 };
    for (let seed = 0; seed < 30; seed++) {
      const each: Brief = { ...randomBriefObject(seed), control: { b: planPoint(...B), c: null, note: '' } };
      const laid = layOut(each);
      if (!laid.ok) continue;
      for (const row of stakeoutRows(each, laid.layout)) {
        const at = twoTapes(row.tieA, row.tieB, B, row.baselineSide);
        // A point told to be on the line may stand 1/16 in off it, on either side.
        expect(Math.hypot(at.x - row.x, at.y - row.y), `${String(seed)} ${row.point}`).toBeLessThan(row.baselineSide === 'on' ? 0.126 : 1e-4);
        told = { ...told, [row.baselineSide]: told[row.baselineSide] + 1 };
      }
    }
    expect(Math.min(told.left, told.right, told.on)).toBeGreaterThan(20);
  });

  it('tells left from right looking from A to B, and on within 1/16 in', () => {
    const [a, b] = [{ x: 10, y: 20 }, { x: 10, y: 120 }];
    expect([-0.063, -0.0625, 0, 0.0625, 0.063].map((off) => baselineSide({ x: 10 + off, y: 400 }, a, b))).toEqual(['left', 'on', 'on', 'on', 'right']);
    expect(baselineSide({ x: 11, y: -50 }, a, b)).toBe('right');
  });
});
