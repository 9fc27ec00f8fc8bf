import { curvePoint } from '../base/curve.ts';
import { type Vec } from '../base/points.ts';
import { toDegrees, type Radians } from '../base/quantity.ts';
import { NOISE } from '../base/tolerance.ts';
import { type Brief, type Side } from '../brief/types.ts';
import { penPartOf, type Layout, type Run } from '../layout/index.ts';

type Pair = readonly [number, number];

/** `stations.json`: the path, run by run, in inches and degrees. Field names are the contract's. */
export interface Stations {
  readonly mouth: Pair;
  readonly control: { readonly a: Pair; readonly b: Pair; readonly c?: Pair };
  readonly runs: readonly StationRun[];
}

export interface StationRun {
  readonly run: string;
  readonly kind: 'straight' | 'arc';
  readonly from: number | null;
  readonly length: number;
  readonly insideRadius: number | null;
  readonly centerlineRadius: number | null;
  readonly angleDeg: number | null;
  readonly hand: Side | null;
  readonly start: Pair;
  readonly end: Pair;
  readonly headingStartDeg: number;
  readonly headingEndDeg: number;
}

/** The path as other programs read it. */
export function stations(brief: Brief, layout: Layout): Stations {
  const { b, c } = brief.control;
  const control = { a: pair(layout.pivot), b: pair(b) };
  return {
    mouth: pair(layout.mouth),
    control: c === null ? control : { ...control, c: pair(c) },
    // A sort pen's own fences are no part of the path: the cattle walk past them.
    runs: layout.runs.filter((run) => !run.aside && penPartOf(run.name) === null).map(stationRun),
  };
}

function stationRun(run: Run): StationRun {
  return {
    run: run.name,
    kind: run.kind,
    from: run.from,
    length: run.length,
    insideRadius: run.insideRadius,
    centerlineRadius: run.centerlineRadius,
    angleDeg: run.angle === null ? null : clear(toDegrees(run.angle)),
    hand: run.hand,
    start: pair(curvePoint(run.path, 0)),
    end: pair(curvePoint(run.path, 1)),
    headingStartDeg: headingDeg(run.headings[0]),
    headingEndDeg: headingDeg(run.headings[1]),
  };
}

/** Degrees in (-180, 180]: a heading within rounding of -180 is 180. */
function headingDeg(heading: Radians): number {
  const degrees = clear(toDegrees(heading));
  return degrees <= -180 ? degrees + 360 : degrees;
}

const pair = (at: Vec): Pair => [clear(at.x), clear(at.y)];

/** A figure that floating noise alone keeps from a whole number is that number, and never a negative zero. */
function clear(value: number): number {
  const whole = Math.round(value) + 0;
  return Math.abs(value - whole) <= NOISE ? whole : value;
}
