import { distance } from '../base/points.ts';
import { inches, type Inches } from '../base/quantity.ts';
import { type Brief, type Side } from '../brief/types.ts';
import { controlPoints, stakePoints } from '../checks/index.ts';
import { type Layout, type PostKind } from '../layout/index.ts';
import { baselineSide, type BaselineSide } from './baseline-side.ts';
import { length, text, type Column, type Units } from './column.ts';

export type StakeKind = PostKind | 'footing' | 'control';

/** A point to set out with tapes. */
export interface StakeRow {
  /** A, B, C; H0 the pivot post; H1 … the other posts in walking order. */
  readonly point: string;
  readonly kind: StakeKind;
  readonly x: Inches;
  readonly y: Inches;
  /** From the pivot post's center. */
  readonly tieA: Inches;
  readonly tieB: Inches;
  readonly tieC: Inches | null;
  readonly holeDiameter: Inches | null;
  readonly holeDepth: Inches | null;
  readonly run: string | null;
  readonly side: Side | null;
  readonly baselineSide: BaselineSide;
}

/**
 * The stakeout table: the control points, then every post in walking order. A is the pivot post's center, so the pivot post (H0) stands
 * on it: A is what the tape is hooked to, H0 the hole. `tieC` is null where the brief has no third control point.
 */
export function stakeoutRows(brief: Brief, layout: Layout): readonly StakeRow[] {
  const controls = controlPoints(brief, layout);
  const a = layout.pivot;
  const { b, c } = brief.control;
  const place = (at: { x: number; y: number }): Pick<StakeRow, 'x' | 'y' | 'tieA' | 'tieB' | 'tieC' | 'baselineSide'> => ({
    x: inches(at.x),
    y: inches(at.y),
    tieA: inches(distance(a, at)),
    tieB: inches(distance(b, at)),
    tieC: c === null ? null : inches(distance(c, at)),
    baselineSide: baselineSide(at, a, b),
  });
  return [
    ...controls.map((control): StakeRow =>
      ({ point: control.name, kind: 'control', ...place(control.at), holeDiameter: null, holeDepth: null, run: null, side: null })),
    ...stakePoints(layout).map(({ name, post }): StakeRow => ({
      point: name,
      kind: post.kind,
      ...place(post.at),
      holeDiameter: post.hole.diameter,
      holeDepth: post.hole.depth,
      run: post.run,
      side: post.side,
    })),
  ];
}

/** Columns of `stakeout.csv`; `tie_c` stays empty where there is no C. */
export function stakeoutColumns(units: Units): readonly Column<StakeRow>[] {
  const size = length(units);
  return [
    text('point', (row) => row.point),
    text('kind', (row) => row.kind),
    size('x', (row) => row.x),
    size('y', (row) => row.y),
    size('tie_a', (row) => row.tieA),
    size('tie_b', (row) => row.tieB),
    size('hole_diameter', (row) => row.holeDiameter),
    size('hole_depth', (row) => row.holeDepth),
    text('run', (row) => row.run),
    text('side', (row) => row.side),
    text('baseline_side', (row) => row.baselineSide),
    size('tie_c', (row) => row.tieC),
  ];
}
