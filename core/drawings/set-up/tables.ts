/** The tables of the setting-up drawings. */
import { inches } from '../../base/quantity.ts';
import { type Column } from '../../drafting/model.ts';
import { erectionSteps, lifts, matchMark, spliceRows, ventRows, weldRows } from '../../schedules/index.ts';
import { weldLength, weldSize } from '../../drafting/weld-words.ts';
import { say, type StringKey } from '../../text/index.ts';
import { printLength, printWeight } from '../../units/index.ts';
import { type DrawInput } from '../input.ts';

export interface SetUpTable {
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
}

const start = (key: StringKey): Column => ({ title: say(key), align: 'start' });
const end = (key: StringKey): Column => ({ title: say(key), align: 'end' });

const printOf = ({ brief: { units } }: DrawInput) => (value: number): string => printLength(inches(value), units, 'feet', units === 'in');
const weightOf = ({ brief: { units } }: DrawInput) => (value: number): string => printWeight(value as Parameters<typeof printWeight>[0], units);

/** Every kind of weld with its symbol in words, how many and how long. */
export function weldTable(input: DrawInput): SetUpTable {
  const { brief, layout, parts } = input;
  const print = printOf(input);
  const weight = weightOf(input);
  const rows = weldRows(brief, layout, parts).map(({ weld: { joint, symbol, thinner }, count, length, filler }) => {
    const mark = symbol.arrow!;
    return [
      say(`weld.joint.${joint}`), say(`weld.kind.${mark.kind}`), weldSize(brief, mark) ?? '', weldLength(brief, mark) ?? '',
      say(symbol.other === null ? 'weld.one' : 'weld.both'), say(symbol.allRound ? 'weld.yes' : 'weld.no'), say(symbol.field ? 'weld.field' : 'weld.shop'),
      printLength(thinner, brief.units, 'bracket', false), String(count), print(length), weight(filler),
    ];
  });
  return {
    title: say('drawings.setUp.welds'),
    columns: [
      start('weld.column.joint'), start('weld.column.kind'), end('weld.column.size'), end('weld.column.stitch'), start('weld.column.sides'), start('weld.column.round'),
      start('weld.column.where'), end('weld.column.thinner'), end('weld.column.count'), end('weld.column.length'), end('weld.column.filler'),
    ],
    rows,
  };
}

export function erectionTable({ layout, parts }: DrawInput): SetUpTable {
  const rows = erectionSteps(layout, parts).map(({ work, where, marks }, i) => [
    String(i + 1), where ?? '', say(`drawings.setUp.work.${work}`), marks.map(({ mark, count }) => (count === 1 ? mark : say('drawings.setUp.times', { mark, count: String(count) }))).join(', '),
  ]);
  return { title: say('drawings.setUp.order'), columns: [end('drawings.setUp.step'), start('drawings.setUp.where'), start('drawings.setUp.work'), start('drawings.setUp.marks')], rows };
}

export function liftTable(input: DrawInput): SetUpTable {
  const print = printOf(input);
  const weight = weightOf(input);
  const rows = lifts(input.brief, input.layout, input.parts).map((lift) => [
    say(`drawings.setUp.what.${lift.what}`), String(lift.count), print(lift.long), lift.high > 0 ? print(lift.high) : '', lift.deep > 0 ? print(lift.deep) : '', weight(lift.weight),
    lift.people === null ? say('drawings.setUp.hoist') : say('drawings.setUp.people', { count: String(lift.people) }), say(`drawings.setUp.truck.${lift.truck}`), lift.marks.join(', '),
  ]);
  return {
    title: say('drawings.setUp.lifts'),
    columns: [
      start('drawings.setUp.what'), end('drawings.setUp.count'), end('drawings.setUp.long'), end('drawings.setUp.high'), end('drawings.setUp.deep'), end('drawings.setUp.weight'),
      start('drawings.setUp.lifted'), start('drawings.setUp.onTruck'), start('drawings.setUp.marks'),
    ],
    rows,
  };
}

export function spliceTable({ layout, parts }: DrawInput): SetUpTable {
  const rows = spliceRows(layout, parts).map(({ run, side, row, posts }) =>
    [say('drawings.fence.name', { run, side }), String(row), posts.map((post) => matchMark(side, post, row)).join(', ')]);
  return { title: say('drawings.setUp.splices'), columns: [start('drawings.setUp.fence'), end('drawings.setUp.row'), start('drawings.setUp.matchMarks')], rows };
}

export function ventTable(input: DrawInput): SetUpTable {
  const { brief, layout, parts } = input;
  const print = printOf(input);
  const rows = ventRows(brief, layout, parts).map(({ section, inside, one, two }) => [section, printLength(inside, brief.units, 'bracket', false), print(one), print(two)]);
  return { title: say('drawings.setUp.vents'), columns: [start('drawings.setUp.section'), end('drawings.setUp.inside'), end('drawings.setUp.oneHole'), end('drawings.setUp.twoHoles')], rows };
}
