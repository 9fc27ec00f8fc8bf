/** What in a brief cannot be set out. */
import { inches, type Radians } from '../base/quantity.ts';
import { SAME_ANGLE, SAME_LENGTH } from '../base/tolerance.ts';
import { type Brief, type Fault } from '../brief/types.ts';
import { printAngle, printLength } from '../units/index.ts';
import { type Chains } from './chains.ts';
import { type FenceLine } from './fence-line.ts';
import { pivotGap } from './pivot-gap.ts';
import { type Fence } from './types.ts';

/** The funnel and the alley's last run each keep this much past the corner at the pivot post (geometry contract). */
const LEAST_LEFT = 24;
/** Bays in the whole facility (project contract). */
const MOST_BAYS = 2000;

const print = (brief: Brief, length: number): string => printLength(inches(length), brief.units, 'inches');

/** Fences too thick for their arc: once for each place in the file. */
export function buildFaults(brief: Brief, lines: readonly FenceLine[]): readonly Fault[] {
  const faults = new Map<string, Fault>();
  for (const line of lines) {
    const thickness = line.section.k + line.section.D / 2;
    if (line.radiusSign < 0 && line.faceRadius !== null && thickness >= line.faceRadius) {
      const path = `${line.brief.path}.post`;
      const params = { run: line.run, side: line.side, thickness: print(brief, thickness), radius: print(brief, line.faceRadius) };
      faults.set(path, { path, code: 'fault.wall-radius', params });
    }
  }
  return [...faults.values()];
}

/** No wedge between the faces at the pivot post, or a corner there that takes too much of the funnel or of the alley. */
export function pivotFaults(brief: Brief, chains: Chains, wedge: Radians): readonly Fault[] {
  if (wedge < SAME_ANGLE) {
    return [{ path: 'crowdPen.funnelAngle', code: 'fault.pivot-wedge', params: { angle: printAngle(wedge) } }];
  }
  const ends = [
    { line: chains.funnel, code: 'fault.funnel-short' as const },
    { line: chains.alley[chains.alley.length - 1]!, code: 'fault.alley-short' as const },
  ];
  return ends.flatMap(({ line, code }) => {
    const corner = pivotGap(line.section, wedge);
    const left = line.length - corner;
    if (left >= LEAST_LEFT - SAME_LENGTH) return [];
    return [{ path: line.lengthPath, code, params: { corner: print(brief, corner), left: print(brief, left) } }];
  });
}

/** The funnel's and the chute's post lines never meet. */
export const mouthFault = (): Fault => ({ path: 'crowdPen.funnelAngle', code: 'fault.mouth-corner', params: {} });

/** The post lines of a fence and of the square shoulder after it never meet. */
export const shoulderFault = ({ lengthPath, run, side }: FenceLine): Fault => ({ path: lengthPath, code: 'fault.shoulder-corner', params: { run, side } });

/** A fence whose two end posts stand in one place or the wrong way round, and more bays than a facility may have. */
export function bayFaults(brief: Brief, fences: readonly Fence[]): readonly Fault[] {
  const faults: Fault[] = [];
  let bays = 0;
  for (const fence of fences) {
    for (const span of fence.spans) {
      bays += span.posts.length - 1;
      const left = span.posts[span.posts.length - 1]! - span.posts[0]!;
      if (left > SAME_LENGTH) continue;
      const params = { run: fence.run, side: fence.side, left: print(brief, left), least: print(brief, fence.section.D) };
      faults.push({ path: fence.lengthPath, code: 'fault.bay-short', params });
    }
  }
  if (bays > MOST_BAYS) faults.push({ path: 'fences.crowdPen.postSpacing', code: 'fault.bays-many', params: { bays, most: MOST_BAYS } });
  return faults;
}
