import { curveLength, type Curve } from '../base/curve.ts';
import { type PlanPoint } from '../base/points.ts';
import { type Catwalk, type Layout, type Run } from '../layout/index.ts';

/** The line along which one end of a catwalk is counted, on the run where it lies. */
export interface CatwalkEnd {
  readonly run: Run;
  readonly line: Curve<PlanPoint>;
  /** Counted before the run begins: its station on the chute, else 0. */
  readonly before: number;
  /** Fraction of the line at which the end lies. */
  readonly share: number;
  readonly value: number;
  /** The most that it may be: the end of the run, or of the chute. */
  readonly total: number;
}

/** A catwalk along the chute counts along the centerline from the mouth, another along its fence's face. Throws where its run is not there. */
export function catwalkEnd(layout: Layout, { brief, stretches, side }: Catwalk, which: 'from' | 'to'): CatwalkEnd {
  const stretch = stretches[which === 'from' ? 0 : stretches.length - 1]!;
  const run = layout.runs.find(({ name }) => name === stretch.run);
  const line = run === undefined ? null : brief.run === 'chute' ? run.path : run.faces[side];
  if (run === undefined || line === null) throw new Error(`a catwalk on a run that is not there: ${stretch.run}`);
  const chute = brief.run === 'chute';
  const before = chute ? run.from ?? 0 : 0;
  const total = chute ? layout.runs.filter(({ from }) => from !== null).reduce((sum, { length }) => sum + length, 0) : curveLength(line);
  const value = which === 'from' ? brief.from : brief.to ?? total;
  return { run, line, before, share: (value - before) / curveLength(line), value, total };
}
