import { type PlanPoint } from '../../base/points.ts';
import { inches, type Inches, type Radians } from '../../base/quantity.ts';
import { type Run } from '../types.ts';

/** A run of no length at `at`, `way` the walk's heading there: fences stand at it that the walk passes. */
export const pointRun = (name: string, at: PlanPoint, way: Radians, width: Inches, faces: Run['faces']): Run => ({
  name,
  kind: 'straight',
  from: null,
  length: inches(0),
  insideRadius: null,
  centerlineRadius: null,
  angle: null,
  hand: null,
  width,
  path: { kind: 'line', a: at, b: at },
  headings: [way, way],
  faces,
});
