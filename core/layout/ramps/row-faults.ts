import { inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Brief, type Fault } from '../../brief/types.ts';
import { printAngle, printLength } from '../../units/index.ts';
import { type SetOutRamps } from './set-out-ramps.ts';

/** Rows that stand clear on the level and touch where they slope. */
export function rowFaults(brief: Brief, { ramps, fences }: SetOutRamps): readonly Fault[] {
  const print = (length: number): string => printLength(inches(length), brief.units, 'inches');
  return ramps.flatMap((ramp) => fences.filter((fence) => fence.run === ramp.name).flatMap((fence): readonly Fault[] => {
    const { rows, railHeight } = fence.section;
    const { slope } = ramp.figures;
    const apart = Math.min(...rows.slice(1).map((row, below) => row - rows[below]!)) * Math.cos(slope);
    if (apart >= railHeight - SAME_LENGTH) return [];
    const params = { run: fence.run, side: fence.side, apart: print(apart), slope: printAngle(slope), least: print(railHeight) };
    return [{ path: `${fence.brief.path}.rails`, code: 'fault.rails-close-slope', params }];
  }));
}
