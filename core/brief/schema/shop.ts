import { RANGES } from '../ranges.ts';
import { customSection } from './custom-section.ts';
import { length, number, weight, whole } from './figures.ts';
import { byName, fields, list } from './groups.ts';
import { choice } from './texts.ts';

/** The least that the rolls take of one section; both figures are asked for where it is named. */
const rollLimit = fields({ radius: length(RANGES.rollRadius), length: length(RANGES.rollLength) });

/** Bars of one length that stand on the rack. */
const onRack = fields({ length: length(RANGES.rackLength), count: whole(RANGES.rackCount), price: number(RANGES.price).optional() });

const welds = fields({
  fillet: length(RANGES.fillet).optional(),
  skinLength: length(RANGES.skinLength).optional(),
  skinPitch: length(RANGES.skinPitch).optional(),
  efficiency: number(RANGES.efficiency).optional(),
});

/** What carries panels to the site: its bed and what it may carry. */
const truck = fields({ length: length(RANGES.truckLength).optional(), width: length(RANGES.truckWidth).optional(), load: weight(RANGES.truckLoad).optional() });

export const shop = fields({
  stock: byName(list(length(RANGES.stockLength), RANGES.stockLengths)).optional(),
  rack: byName(list(onRack, RANGES.rackEntries)).optional(),
  sheets: list(list(length(RANGES.sheetSide), RANGES.pair), RANGES.sheetSizes).optional(),
  kerf: length(RANGES.kerf).optional(),
  trim: length(RANGES.trim).optional(),
  keepDrop: length(RANGES.keepDrop).optional(),
  weldGap: length(RANGES.weldGap).optional(),
  grip: length(RANGES.grip).optional(),
  springback: number(RANGES.springback).optional(),
  gaugeChord: length(RANGES.gaugeChord).optional(),
  plateKerf: length(RANGES.kerf).optional(),
  coating: choice(['paint', 'galvanized', 'bare']).optional(),
  roll: byName(rollLimit).optional(),
  prices: byName(number(RANGES.price)).optional(),
  sections: byName(customSection()).optional(),
  welds: welds.optional(),
  truck: truck.optional(),
  handLift: weight(RANGES.handLift).optional(),
});
