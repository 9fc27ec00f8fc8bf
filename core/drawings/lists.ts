/** The piece list: a table on as many drawings as it needs. */
import { type Column, type Drawing } from '../drafting/model.ts';
import { printSize } from '../drafting/kit.ts';
import { pieceRows } from '../schedules/index.ts';
import { say, type StringKey } from '../text/index.ts';
import { flowBlocks } from './flow.ts';
import { type DrawInput, pageOf } from './input.ts';
import { drawingOf } from './drawing-of.ts';
import { tableBlocks } from './table-blocks.ts';

const start = (key: StringKey): Column => ({ title: say(key), align: 'start' });
const end = (key: StringKey): Column => ({ title: say(key), align: 'end' });

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
