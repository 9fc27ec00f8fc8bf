/** The bend schedule: a small page for the rolls, and the whole table. */
import { paperNamed } from '../../drafting/paper.ts';
import { printSize } from '../../drafting/kit.ts';
import { type Column, type Drawing } from '../../drafting/model.ts';
import { bendRows, type BendRow } from '../../schedules/index.ts';
import { say, type StringKey } from '../../text/index.ts';
import { printAngle } from '../../units/index.ts';
import { drawingOf } from '../drawing-of.ts';
import { flowBlocks } from '../flow.ts';
import { type DrawInput, pageOf } from '../input.ts';
import { tableBlocks } from '../table-blocks.ts';
import { markingBlock } from './marking-view.ts';
import { rollingNotes } from './rolling-notes.ts';

const start = (key: StringKey): Column => ({ title: say(key), align: 'start' });
const end = (key: StringKey): Column => ({ title: say(key), align: 'end' });

/** The drawings of the bend schedule, in the order of rolling. */
export function bendDrawings(input: DrawInput): Drawing[] {
  const rows = bendRows(input.brief, input.parts);
  const rolls = rows.length === 0 ? [] : rollPages(input, rows);
  return [...rolls, ...wholeTable(input, rows, rolls.length)];
}

/** Letter or A4, to hang beside the rolls: what they are set to, how a piece is gauged, and how it is marked. */
function rollPages(input: DrawInput, rows: readonly BendRow[]): Drawing[] {
  const { brief } = input;
  const page = pageOf(input, paperNamed(brief.paper.startsWith('ISO') ? 'ISO A4' : 'ANSI A'));
  const { size, exact } = printers(brief.units);
  const columns = [
    start('drawings.bend.mark'), end('drawings.bend.order'), end('drawings.bend.quantity'), start('drawings.bend.section'), end('drawings.bend.cut'),
    end('drawings.bend.set'), end('drawings.bend.gauge'), end('drawings.bend.setGauge'), start('drawings.bend.start'),
  ];
  const cells = rows.map((row) => [
    row.mark, String(row.rollOrder), String(row.quantity), row.section, size(row.orderLength), exact(row.setRadius),
    say('drawings.bend.gaugeCell', { chord: size(row.gaugeChord), rise: exact(row.gaugeRise) }), row.setGaugeRise === null ? '' : exact(row.setGaugeRise),
    say(`bend.cut.${row.cuts[0]}`),
  ]);
  const title = say('drawings.bend.rolls');
  const table = tableBlocks(page, title, say('drawings.bend.settings'), columns, cells);
  return flowBlocks(page, [table, rollingNotes(page, brief, title), [markingBlock(page, title)]])
    .map((filled, i) => drawingOf(page, filled, '6', i, title, say('drawings.bend.file')));
}

/** Every figure of every mark, on the project's own paper. */
function wholeTable(input: DrawInput, rows: readonly BendRow[], before: number): Drawing[] {
  const page = pageOf(input);
  const { size, exact } = printers(input.brief.units);
  const columns = [
    start('drawings.bend.mark'), end('drawings.bend.order'), end('drawings.bend.quantity'), start('drawings.bend.section'), end('drawings.bend.axis'),
    end('drawings.bend.inside'), end('drawings.bend.angle'), end('drawings.bend.length'), end('drawings.bend.chord'), end('drawings.bend.rise'),
    end('drawings.bend.gauge'), end('drawings.bend.cut'), end('drawings.bend.set'), start('drawings.bend.start'), start('drawings.bend.end'),
  ];
  const cells = rows.map((row) => [
    row.mark, String(row.rollOrder), String(row.quantity), row.section, exact(row.axisRadius), exact(row.insideRadius), printAngle(row.angle), exact(row.arcLength),
    exact(row.chord), exact(row.rise), say('drawings.bend.gaugeCell', { chord: size(row.gaugeChord), rise: exact(row.gaugeRise) }), exact(row.orderLength),
    exact(row.setRadius), say(`bend.cut.${row.cuts[0]}`), say(`bend.cut.${row.cuts[1]}`),
  ]);
  if (cells.length === 0) cells.push([say('drawings.bend.none'), '', ...columns.slice(2).map(() => '')]);
  const title = say('drawings.bend.title');
  return flowBlocks(page, [tableBlocks(page, title, title, columns, cells)])
    .map((filled, i) => drawingOf(page, filled, '6', before + i, title, say('drawings.bend.file')));
}

const printers = (units: 'in' | 'mm'): { readonly size: (value: number) => string; readonly exact: (value: number) => string } => ({
  size: (value) => printSize({ units }, value),
  exact: (value) => printSize({ units }, value, true),
});
