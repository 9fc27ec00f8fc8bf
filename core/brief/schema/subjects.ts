/** What stands in and beside the fences: openings, catwalks, ramps, pad and pens. What has no meaning without a field asks for it. */
import { RANGES } from '../ranges.ts';
import { angle, length, number, whole } from './figures.ts';
import { fields, list } from './groups.ts';
import { runs, side } from './runs.ts';
import { choice, steelName, text } from './texts.ts';

const runName = () => text({ least: 1, greatest: 40, unit: 'none' });
const point = list(length(RANGES.plan), RANGES.pair);

export const openings = list(fields({
  kind: choice(['man-gate', 'backstop', 'pen-gate', 'alley-gate']),
  run: runName(),
  side: side().optional(),
  at: length(RANGES.station),
  width: length(RANGES.openingWidth).optional(),
  held: choice(['rope', 'pin', 'none']).optional(),
  swings: choice(['in', 'out', 'forward', 'back']).optional(),
  hangs: choice(['first', 'last']).optional(),
  hingePost: steelName('section').optional(),
}), RANGES.subjects);

export const catwalks = list(fields({
  run: runName(),
  side: side(),
  from: length(RANGES.station).optional(),
  to: length(RANGES.station).optional(),
  width: length(RANGES.catwalkWidth).optional(),
  deckHeight: length(RANGES.deckHeight).optional(),
}), RANGES.subjects);

export const ramps = list(fields({
  kind: choice(['load', 'unload']),
  dockHeight: length(RANGES.dockHeight).optional(),
  width: length(RANGES.rampWidth).optional(),
  surface: choice(['stepped', 'cleated']).optional(),
  tread: length(RANGES.tread).optional(),
  slope: angle(RANGES.rampSlope).optional(),
  cleat: length(RANGES.cleat).optional(),
  dockLength: length(RANGES.dockLength).optional(),
  at: point.optional(),
  heading: angle(RANGES.heading).optional(),
}), RANGES.subjects);

const roof = fields({
  length: length(RANGES.padSize).optional(),
  width: length(RANGES.padSize).optional(),
  open: list(choice(['in', 'out', 'left', 'right']), RANGES.open).optional(),
  daylight: number(RANGES.daylight).optional(),
});

export const squeezePad = fields({
  length: length(RANGES.padSize).optional(),
  width: length(RANGES.padSize).optional(),
  roof: roof.optional(),
});

export const sortPens = list(fields({ side: side(), gate: length(RANGES.openingWidth).optional() }), RANGES.subjects);
export const holdingPens = list(fields({
  head: whole(RANGES.head),
  gate: length(RANGES.openingWidth).optional(),
  length: length(RANGES.holdingPen).optional(),
  width: length(RANGES.holdingPen).optional(),
  swings: choice(['in', 'out']).optional(),
  hangs: choice(['first', 'last']).optional(),
  hingePost: steelName('section').optional(),
}), RANGES.subjects);

/** A way back to the alley. Where it begins and its runs are asked for. */
export const returnAlley = fields({
  from: fields({ run: runName(), side: side(), at: length(RANGES.station) }),
  width: length(RANGES.openingWidth).optional(),
  runs,
});
