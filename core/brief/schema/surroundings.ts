import { RANGES } from '../ranges.ts';
import { degree, angle, length, number, soil, weight, whole } from './figures.ts';
import { fields, list } from './groups.ts';
import { choice, date, flag, letter, text, time, timeZone } from './texts.ts';

export const revision = fields({
  letter: letter().optional(),
  date: date().optional(),
  note: text(RANGES.note).optional(),
});

/** Issues before this one, oldest first. */
export const revisions = list(fields({ letter: letter(), date: date().optional(), note: text(RANGES.note).optional() }), RANGES.revisions);

/** Working hours; what makes them is asked for where they are given. */
const work = fields({ from: time(), to: time(), months: list(whole(RANGES.month), RANGES.months) });

export const site = fields({
  latitude: degree(RANGES.latitude).optional(),
  longitude: degree(RANGES.longitude).optional(),
  timeZone: timeZone().optional(),
  bearing: angle(RANGES.bearing).optional(),
  soil: soil(RANGES.soil).optional(),
  volume: choice(['ranch', 'feedlot', 'auction']).optional(),
  jurisdiction: choice(['us', 'eu', 'uk', 'ontario']).optional(),
  tenure: choice(['owned', 'leased']).optional(),
  work: work.optional(),
});

export const cattle = fields({
  weight: weight(RANGES.cattleWeight).optional(),
  kind: choice(['calf', 'yearling', 'mature']).optional(),
  flighty: flag().optional(),
  horned: flag().optional(),
  bodyLength: length(RANGES.bodyLength).optional(),
  eyeHeight: length(RANGES.eyeHeight).optional(),
  headPerDay: whole(RANGES.headPerDay).optional(),
});

export const floors = fields({
  fall: number(RANGES.fall).optional(),
  thickness: length(RANGES.floorThickness).optional(),
  pattern: text(RANGES.pattern).optional(),
});

export const footings = fields({
  diameter: length(RANGES.footingDiameter).optional(),
  depth: length(RANGES.footingDepth).optional(),
  load: weight(RANGES.footingLoad).nullable().optional(),
  loadHeight: length(RANGES.loadHeight).optional(),
  heldAtSurface: flag().optional(),
});

const point = list(length(RANGES.plan), RANGES.pair);

export const control = fields({ b: point.optional(), c: point.optional(), note: text(RANGES.note).optional() });
