import { z } from 'zod';
import { RANGES } from '../ranges.ts';
import { angle, length } from './figures.ts';
import { fields, list } from './groups.ts';
import { choice } from './texts.ts';

export const side = () => choice(['left', 'right']);

const run = z.discriminatedUnion('kind', [
  fields({ kind: z.literal('straight'), length: length(RANGES.straightLength) }),
  fields({ kind: z.literal('arc'), insideRadius: length(RANGES.insideRadius), angle: angle(RANGES.arcAngle), hand: side() }),
]);

/** A chute or alley, run by run in walking order. What makes a run is asked for. */
export const runs = list(run, RANGES.runs);
