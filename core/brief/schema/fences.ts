import { RANGES } from '../ranges.ts';
import { length, whole } from './figures.ts';
import { fields } from './groups.ts';
import { choice, steelName } from './texts.ts';

const settings = {
  height: length(RANGES.height).optional(),
  solidFrom: length(RANGES.solidFrom).optional(),
  solidTo: length(RANGES.solidTo).optional(),
  construction: choice(['lapped', 'coped']).optional(),
  rails: whole(RANGES.rails).optional(),
  bottomRail: length(RANGES.bottomRail).optional(),
  rail: steelName('section').optional(),
  post: steelName('section').optional(),
  postSpacing: length(RANGES.postSpacing).optional(),
  sheet: steelName('sheet').nullable().optional(),
};

const fence = fields(settings);
const sided = fields({ ...settings, left: fence.optional(), right: fence.optional() });

/** Fences by the place they stand at; each takes what it does not say from the one around it. */
export const fences = fields({
  crowdPen: fence.optional(),
  alley: sided.optional(),
  junction: sided.optional(),
  chute: sided.optional(),
  ramp: sided.optional(),
  pad: sided.optional(),
  pens: sided.optional(),
});
