/** Bend schedule and piece list: tables on as many drawings as they need. */
import { type Column, type Drawing } from '../drafting/model.ts';
import { printSize } from '../drafting/kit.ts';
import { bendRows, pieceRows } from '../schedules/index.ts';
import { say, type StringKey } from '../text/index.ts';
import { printAngle } from '../units/index.ts';
import { flowBlocks } from './flow.ts';
import { type DrawInput, pageOf } from './input.ts';
import { drawingOf } from './drawing-of.ts';
import { tableBlocks } from './table-blocks.ts';

const start = (key: StringKey): Column => ({ title: say(key), align: 'start' });
const end = (key: StringKey): Column => ({ title: say(key), align: 'end' });

/** The bend schedule, by radius in the order of rolling, set radius and gauge rise on every row. */
export function bendDrawings(input: DrawInput): Drawing[] {
  const { brief, parts } = input;
  const page = pageOf(input);
  const size = (value: number): string => printSize({ units: brief.units }, value, true);
  const rows = [...bendRows(brief, parts)].sort((a, b) => bySection(a.section, b.section) || a.axisRadius - b.axisRadius || b.arcLength - a.arcLength);
  const columns = [
    start('drawings.bend.mark'), end('drawings.bend.quantity'), start('drawings.bend.section'), end('drawings.bend.axis'), end('drawings.bend.inside'),
    end('drawings.bend.angle'), end('drawings.bend.length'), end('drawings.bend.chord'), end('drawings.bend.rise'), end('drawings.bend.gauge'),
    end('drawings.bend.order'), end('drawings.bend.set'),
  ];
  const cells = rows.map((row) => [
    row.mark, String(row.quantity), row.section, size(row.axisRadius), size(row.insideRadius), printAngle(row.angle), size(row.arcLength), size(row.chord),
    size(row.rise), say('drawings.bend.gaugeCell', { chord: printSize({ units: brief.units }, row.gaugeChord), rise: size(row.gaugeRise) }), size(row.orderLength), size(row.setRadius),
  ]);
  if (cells.length === 0) cells.push([say('drawings.bend.none'), ...columns.slice(1).map(() => '')]);
  const title = say('drawings.bend.title');
  return flowBlocks(page, [tableBlocks(page, title, title, columns, cells)]).map((filled, i) => drawingOf(page, filled, '6', i, title, say('drawings.bend.file')));
}

/** Every row of the piece list, in the order of the walk. */
export function pieceDrawings(input: DrawInput): Drawing[] {
  const { brief, parts } = input;
  const page = pageOf(input);
  const size = (value: number | null): string => (value === null ? '' : printSize({ units: brief.units }, value));
  const byMark = new Map<string, { quantity: number; places: Set<string>; row: ReturnType<typeof pieceRows>[number] }>();
  for (const row of pieceRows(parts)) {
    const entry = byMark.get(row.mark) ?? { quantity: 0, places: new Set<string>(), row };
    entry.quantity += row.quantity;
    entry.places.add(say('drawings.fence.name', { run: row.run, side: row.side }));
    byMark.set(row.mark, entry);
  }
  const columns = [
    start('drawings.list.mark'), start('drawings.list.kind'), end('drawings.list.quantity'), start('drawings.list.section'), end('drawings.list.length'),
    end('drawings.list.short'), end('drawings.list.weight'), start('drawings.list.where'),
  ];
  const rows = [...byMark.values()].map(({ quantity, places, row }) => [
    row.mark, say(`drawings.kind.${row.kind}` as StringKey), String(quantity), row.section, row.flatHeight === null ? size(row.length) : `${size(row.length)} x ${size(row.flatHeight)}`, size(row.lengthShort),
    say('drawings.list.pounds', { weight: (Math.round(row.weight * 10) / 10).toFixed(1) }), [...places].join(', '),
  ]);
  const title = say('drawings.list.title');
  return flowBlocks(page, [tableBlocks(page, title, title, columns, rows)]).map((filled, i) => drawingOf(page, filled, '7', i, title, say('drawings.list.file')));
}

const bySection = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
