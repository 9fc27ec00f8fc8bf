import { curvePoint } from '../../base/curve.ts';
import { type PlanPoint } from '../../base/points.ts';
import { type Radians, toDegrees } from '../../base/quantity.ts';
import { type Run } from '../../layout/index.ts';
import { type LowSun, STEP } from './low-suns.ts';

/** A low sun shines into the eyes within this of the heading, degrees (from memory, no source). */
export const AHEAD = 30;

/** Hours of the wall clock, minutes from midnight. */
export interface GlareHours {
  readonly month: number;
  readonly from: number;
  readonly to: number;
}

export interface RunGlare {
  readonly run: string;
  /** Least angle between the way the cattle walk and a low sun, degrees; null where no working hour has one. */
  readonly least: number | null;
  /** Where on the run that is. */
  readonly at: PlanPoint;
  /** When there is glare, month by month, in order. */
  readonly hours: readonly GlareHours[];
}

const turnTo = (degrees: number): number => ((degrees % 360) + 360) % 360;

/** True bearing, degrees, of a heading in the plan: +y lies at the site's bearing. */
export const trueBearing = (heading: Radians, bearing: Radians): number => turnTo(toDegrees(bearing) + 90 - toDegrees(heading));

/**
 * The ways that cattle walk on a run: its first true bearing, how far it turns from there (degrees, to the right positive), and where
 * on its path that begins. In the crowd pen cattle turn all ways; what counts is how they leave it.
 */
function waysOf(run: Run, bearing: Radians): { readonly first: number; readonly turn: number; readonly from: number } {
  if (run.name === 'crowd-pen') return { first: trueBearing(run.headings[1], bearing), turn: 0, from: 1 };
  const turn = run.angle === null || run.hand === null ? 0 : toDegrees(run.angle) * (run.hand === 'right' ? 1 : -1);
  return { first: trueBearing(run.headings[0], bearing), turn, from: 0 };
}

/** Least angle between a sun's azimuth and the ways of a run, and how far (0 to 1) round its turn that is. */
function leastAngle(azimuth: number, first: number, turn: number): { readonly angle: number; readonly share: number } {
  const past = turnTo(turn < 0 ? first - azimuth : azimuth - first);
  const sweep = Math.abs(turn);
  if (past <= sweep) return { angle: 0, share: sweep === 0 ? 0 : past / sweep };
  return past - sweep <= 360 - past ? { angle: past - sweep, share: 1 } : { angle: 360 - past, share: 0 };
}

/** The low suns that a run is walked into. */
export function runGlare(run: Run, bearing: Radians, suns: readonly LowSun[]): RunGlare {
  const { first, turn, from } = waysOf(run, bearing);
  let best = { angle: Infinity, share: 0 };
  const glaring = new Map<number, Set<number>>();
  for (const { month, minute, azimuth } of suns) {
    const found = leastAngle(azimuth, first, turn);
    if (found.angle < best.angle) best = found;
    if (found.angle > AHEAD) continue;
    const minutes = glaring.get(month);
    if (minutes === undefined) glaring.set(month, new Set([minute]));
    else minutes.add(minute);
  }
  return {
    run: run.name,
    least: best.angle === Infinity ? null : best.angle,
    at: curvePoint(run.path, turn === 0 ? from : best.share),
    hours: [...glaring].flatMap(([month, minutes]) => stretches(month, [...minutes].sort((a, b) => a - b))),
  };
}

/** Looks that follow one another are one stretch of time. */
function stretches(month: number, minutes: readonly number[]): readonly GlareHours[] {
  const found: GlareHours[] = [];
  for (const minute of minutes) {
    const before = found.at(-1);
    if (before !== undefined && minute - before.to <= STEP) found[found.length - 1] = { ...before, to: minute };
    else found.push({ month, from: minute, to: minute });
  }
  return found;
}
