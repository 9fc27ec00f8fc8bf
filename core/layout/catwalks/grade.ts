/** The line that a fence follows, and the deck beside it: the ground, or beside a ramp its nosings or surface and its dock. */
import { inches, radians, type Inches, type Radians } from '../../base/quantity.ts';
import { fromLowEnd } from '../ramps/along.ts';
import { lineHeight } from '../ramps/figures.ts';
import { rampParts } from '../ramps/ramp-fences.ts';
import { type Ramp } from '../types.ts';

/** `u`: inches along the face, level, from the run's start. */
export interface Grade {
  readonly ramp: Ramp | null;
  /** Over the ground. */
  readonly height: (u: number) => Inches;
  /** Of the part in which `u` lies: positive where it rises as the cattle walk. */
  readonly slope: (u: number) => Radians;
  /** Where the slope breaks. */
  readonly breaks: readonly Inches[];
}

const LEVEL: Grade = { ramp: null, height: () => inches(0), slope: () => radians(0), breaks: [] };

/** The grade of a run's fences: level, but on a ramp. */
export function gradeOf(ramps: readonly Ramp[], run: string): Grade {
  const ramp = ramps.find(({ name }) => name === run);
  if (ramp === undefined) return LEVEL;
  const parts = rampParts(ramp);
  const rising = ramp.brief.kind === 'load' ? ramp.figures.slope : -ramp.figures.slope;
  return {
    ramp,
    height: (u) => lineHeight(ramp.figures, fromLowEnd(ramp, u)),
    slope: (u) => radians(parts.some(({ kind, from, to }) => kind === 'slope' && u > from && u < to) ? rising : 0),
    breaks: parts.slice(1).map(({ from }) => from),
  };
}
