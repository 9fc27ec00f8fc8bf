import { describe, expect, it } from 'vitest';
import { planPoint } from '../../core/base/points.ts';
import { type Brief } from '../../core/brief/types.ts';
import { type Layout, type Post } from '../../core/layout/index.ts';
import { stakeoutColumns, stakeoutRows, type StakeRow } from '../../core/schedules/index.ts';
import { writeCsv } from '../../core/writers/csv.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { randomWorked, work } from './project.ts';

const skewed = (brief: Brief): Brief => ({ ...brief, control: { b: planPoint(-180, 95), c: planPoint(40, -310), note: '' } });

/** Where two tapes meet, A at the origin: the law of cosines along the line to B, then square to it on the side told. */
function fromTies(row: StakeRow, b: { x: number; y: number }): { x: number; y: number } {
  const base = Math.sqrt(b.x ** 2 + b.y ** 2);
  const along = (row.tieA ** 2 + base ** 2 - row.tieB ** 2) / (2 * base);
  const off = Math.sqrt(Math.max(0, row.tieA ** 2 - along ** 2)) * { left: 1, right: -1, on: 0 }[row.baselineSide];
  return { x: (along * b.x - off * b.y) / base, y: (along * b.y + off * b.x) / base };
}

describe('the stakeout', () => {
  const projects = [work(makeBrief()), ...randomWorked(60)].map(({ brief, layout }) => ({ brief: skewed(brief), layout }));

  it('begins with the control points, then names every post once, the pivot post P0', () => {
    for (const { brief, layout } of projects) {
      const rows = stakeoutRows(brief, layout);
      expect(rows.slice(0, 3).map((row) => [row.point, row.kind])).toEqual([['A', 'control'], ['B', 'control'], ['C', 'control']]);
      const stakes = rows.slice(3);
      expect(stakes.filter((row) => row.kind === 'pivot-post').map((row) => [row.point, row.x, row.y])).toEqual([['P0', 0, 0]]);
      const others = layout.posts.filter((post) => post.kind !== 'pivot-post');
      expect(stakes.filter((row) => row.kind !== 'pivot-post').map(({ point, kind, x, y, run, side }) => ({ point, kind, x, y, run, side })))
        .toEqual(others.map(({ kind, at, run, side }, i) => ({ point: `P${String(i + 1)}`, kind, x: at.x, y: at.y, run, side })));
    }
  });

  it('gives ties that, measured again, are the distances from A, B and C', () => {
    for (const { brief, layout } of projects) {
      for (const row of stakeoutRows(brief, layout)) {
        expect(row.tieA ** 2).toBeCloseTo(row.x ** 2 + row.y ** 2, 5);
        expect(row.tieB ** 2).toBeCloseTo((row.x + 180) ** 2 + (row.y - 95) ** 2, 5);
        expect(row.tieC! ** 2).toBeCloseTo((row.x - 40) ** 2 + (row.y + 310) ** 2, 5);
      }
    }
  });

  it('gives every point back from two tapes and its side of the baseline', () => {
    let on = 0;
    for (const { brief, layout } of projects) {
      for (const row of stakeoutRows(brief, layout)) {
        const found = fromTies(row, brief.control.b);
        // On the baseline a point is known to what a tape reads, 1/16 in.
        const reach = row.baselineSide === 'on' ? 1 / 16 + 1e-5 : 1e-5;
        if (row.baselineSide === 'on') on++;
        expect(Math.hypot(found.x - row.x, found.y - row.y)).toBeLessThan(reach);
      }
    }
    expect(on).toBeGreaterThanOrEqual(3 * projects.length);
  });

  it('tells left, right and on, 1/16 in of the line included', () => {
    const { brief, layout } = work(makeBrief());
    const [pivot, some] = [layout.posts.find((post) => post.kind === 'pivot-post')!, layout.posts[0]!];
    const at = (y: number): Post => ({ ...some, at: planPoint(50, y) });
    const moved: Layout = { ...layout, posts: [pivot, ...[1 / 16, -1 / 16, 0.07, -0.07].map(at)] };
    expect(stakeoutRows(brief, moved).slice(3).map((row) => row.baselineSide)).toEqual(['on', 'on', 'left', 'right']);
  });

  it('leaves tie c empty without a third control point, and digs nothing for a control point', () => {
    const { brief, layout } = work(makeBrief());
    const rows = stakeoutRows(brief, layout);
    expect(rows.every((row) => row.tieC === null && row.point !== 'C')).toBe(true);
    expect(rows.slice(0, 2)).toMatchObject([
      { point: 'A', tieA: 0, tieB: 240, holeDiameter: null, holeDepth: null, baselineSide: 'on', run: null },
      { point: 'B', tieA: 240, tieB: 0, holeDiameter: null, holeDepth: null, baselineSide: 'on', run: null },
    ]);
    expect(rows.slice(2).every((row) => row.holeDiameter === 12 && row.holeDepth === 36)).toBe(true);
  });

  it('writes the columns of the contract', () => {
    const { brief, layout } = work(makeBrief());
    const [header, first] = writeCsv(stakeoutColumns('in'), stakeoutRows(brief, layout)).split('\r\n');
    expect(header).toBe('point,kind,x,y,tie_a,tie_b,hole_diameter,hole_depth,run,side,baseline_side,tie_c');
    expect(first).toBe('A,control,0.0000,0.0000,0.0000,240.0000,,,,,on,');
  });
});
