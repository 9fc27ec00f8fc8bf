import { curveLength, type Curve } from '../base/curve.ts';
import { type PlanPoint } from '../base/points.ts';
import { type OpeningBrief } from '../brief/types.ts';
import { isJambedGate, type Layout, type Opening, type Run } from '../layout/index.ts';

/** The line along which an opening's place is counted, on the run where it stands. */
export interface CountedLine {
  readonly run: Run;
  readonly line: Curve<PlanPoint>;
  /** Counted before the run begins: its station on the chute, else 0. */
  readonly before: number;
  /** Fraction of the line at which the opening stands. */
  readonly share: number;
}

/** A gate in the fence of one run counts along its face, all else along the centerline; on the chute, from the mouth. */
export function countedLine(layout: Layout, opening: OpeningBrief, stands: Opening): CountedLine {
  const run = layout.runs.find((one) => one.name === stands.run);
  if (run === undefined) throw new Error(`an opening on a run that is not there: ${stands.run}`);
  const line = isJambedGate(stands) && opening.run !== 'chute' ? run.faces[stands.side] : run.path;
  if (line === null) throw new Error(`an opening in a fence that is not there: ${stands.run}`);
  const before = opening.run === 'chute' ? run.from ?? 0 : 0;
  return { run, line, before, share: (opening.at - before) / curveLength(line) };
}
