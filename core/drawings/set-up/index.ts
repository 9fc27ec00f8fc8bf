/** To set up: order of erection, lifts and truck, match marks, welds, vent holes and what to beware of. Tables on as many drawings as they need. */
import { sheetPoint } from '../../base/points.ts';
import { inches } from '../../base/quantity.ts';
import { type Drawing } from '../../drafting/model.ts';
import { noteHeight } from '../../drafting/table.ts';
import { SET_UP_PRACTICE } from '../../schedules/index.ts';
import { say, type StringKey } from '../../text/index.ts';
import { printLength, printWeight } from '../../units/index.ts';
import { drawingOf } from '../drawing-of.ts';
import { type Block, flowBlocks, freeUnder } from '../flow.ts';
import { type DrawInput, type Page, pageOf } from '../input.ts';
import { tableBlocks } from '../table-blocks.ts';
import { erectionTable, liftTable, spliceTable, type SetUpTable, ventTable, weldTable } from './tables.ts';

export function setUpDrawings(input: DrawInput): Drawing[] {
  const page = pageOf(input);
  const title = say('drawings.setUp.title');
  const asBlocks = ({ title: name, columns, rows }: SetUpTable, first?: number): Block[] =>
    (rows.length === 0 ? [] : tableBlocks(page, title, name, columns, rows, first === undefined ? {} : { first: { height: first, count: 1 } }));
  const words = [notes(page, 'drawings.setUp.cautions', cautionsOf(input)), notes(page, 'drawings.setUp.rules', rulesOf(input))];
  const lists = [
    words,
    // The welds begin under the words.
    [...asBlocks(weldTable(input), freeUnder(page, [words])), ...asBlocks(ventTable(input)), ...asBlocks(spliceTable(input))],
    asBlocks(erectionTable(input)),
    asBlocks(liftTable(input)),
  ].filter((blocks) => blocks.length > 0);
  return flowBlocks(page, lists).map((filled, i) => drawingOf(page, filled, '13', i, title, say('drawings.setUp.file')));
}

function cautionsOf({ brief }: DrawInput): readonly string[] {
  const keys: readonly StringKey[] = [
    'drawings.setUp.caution.codes', 'drawings.setUp.caution.brace', 'drawings.setUp.caution.lift', 'drawings.setUp.caution.sealed', 'drawings.setUp.caution.used',
    brief.shop.coating === 'galvanized' ? 'drawings.setUp.caution.dip' : 'drawings.setUp.caution.zinc', 'drawings.setUp.caution.fire', 'drawings.setUp.caution.sharp',
  ];
  return keys.map((key) => say(key));
}

function rulesOf({ brief }: DrawInput): readonly string[] {
  const { welds, truck, handLift } = brief.shop;
  const print = (value: number): string => printLength(inches(value), brief.units);
  const { cureDays } = SET_UP_PRACTICE;
  return [
    say('drawings.setUp.rule.fillet', { least: print(welds.fillet) }),
    say('drawings.setUp.rule.stitch', { length: print(welds.skinLength), pitch: print(welds.skinPitch) }),
    say('drawings.setUp.rule.flare'),
    say('drawings.setUp.rule.filler', { percent: String(Math.round(welds.efficiency * 100)) }),
    say('drawings.setUp.rule.cure', { rails: String(cureDays.rails), load: String(cureDays.load) }),
    say('drawings.setUp.rule.match'),
    say('drawings.setUp.rule.truck', { length: print(truck.length), width: print(truck.width), load: printWeight(truck.load, brief.units) }),
    say('drawings.setUp.rule.hand', { weight: printWeight(handLift, brief.units), people: String(SET_UP_PRACTICE.mostPeople) }),
    ...(brief.shop.coating === 'galvanized' ? [say('drawings.setUp.rule.vent')] : []),
  ];
}

/** Half the page's width, or all of it on small paper. */
function notes(page: Page, key: StringKey, lines: readonly string[]): Block {
  const width = page.room.width > 130 * page.kit.h ? (page.room.width - 0.3) / 2 : page.room.width;
  const spaced = lines.map((line) => `- ${line}`);
  const height = noteHeight(page.kit, say(key), spaced, width);
  return { width, height, label: say('drawings.setUp.title'), place: (x, y) => ({ notes: [{ title: say(key), lines: spaced, at: sheetPoint(x, y + height), width }] }) };
}
