/** A ramp seen from above: what lies on the ground of its steps or cleats, for the plan, the live plan and its own drawing. */
import { add, scale, unitAt, type Vec } from '../../base/points.ts';
import { PENS } from '../../drafting/kit.ts';
import { type Shape } from '../../drafting/model.ts';
import { type Layout, type Ramp } from '../../layout/index.ts';
import { RAMP_PRACTICE } from '../../parts/index.ts';
import { line, outline } from './shapes.ts';

/** The plan's point of a place on a ramp: level from its low end, and across to the left of the way up. */
export function rampPoint({ at, heading, brief }: Ramp, s: number, across: number): Vec {
  const up = brief.kind === 'load' ? heading : heading + Math.PI;
  return add(at, add(scale(unitAt(up), s), scale(unitAt(up + Math.PI / 2), across)));
}

/** Steps' faces or cleats' lower edges, the dock's edge and its end, level from the low end. */
export function crossings({ figures, length }: Ramp): readonly number[] {
  const { surface, run, slope } = figures;
  const inner = surface.kind === 'stepped'
    ? Array.from({ length: surface.risers }, (_, i) => i * surface.tread)
    : [0, ...surface.cleats.map((up) => up * Math.cos(slope)), run];
  return length - run > 1e-6 ? [...inner, length] : inner;
}

/** The outline of a ramp's walk with its steps or cleats. */
export function rampShapes(ramp: Ramp): Shape[] {
  const half = ramp.brief.width / 2;
  const { thick } = RAMP_PRACTICE.bumper;
  const across = crossings(ramp).map((s) => line(PENS.thin, rampPoint(ramp, s, -half), rampPoint(ramp, s, half)));
  const corners = [[ramp.length, -half], [ramp.length + thick, -half], [ramp.length + thick, half], [ramp.length, half]] as const;
  return [...across, ...outline(PENS.thin, corners.map(([s, x]) => rampPoint(ramp, s, x)))];
}

/** Of every ramp among these runs. */
export const rampsFromAbove = (layout: Layout, runs: ReadonlySet<string>): Shape[] =>
  layout.ramps.filter((ramp) => runs.has(ramp.name)).flatMap(rampShapes);
