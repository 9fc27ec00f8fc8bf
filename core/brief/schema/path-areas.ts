import { RANGES } from '../ranges.ts';
import { angle, length } from './figures.ts';
import { fields } from './groups.ts';
import { runs, side } from './runs.ts';
import { steelName } from './texts.ts';

export const alley = fields({ runs: runs.optional() });

export const crowdPen = fields({
  radius: length(RANGES.radius).optional(),
  sweep: angle(RANGES.sweep).optional(),
  hand: side().optional(),
  funnelAngle: angle(RANGES.funnelAngle).optional(),
  gateClearance: length(RANGES.gateClearance).optional(),
  pivotPost: steelName('section').optional(),
  pivotLength: length(RANGES.pivotLength).optional(),
});

export const chute = fields({ width: length(RANGES.chuteWidth).optional(), runs: runs.optional() });
