/** What a holding pen measures and what it holds, as a table beside its plan. */
import { printSize } from '../../drafting/kit.ts';
import { type Column } from '../../drafting/model.ts';
import { penArea, type HoldingPen } from '../../layout/index.ts';
import { gateMarks } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { type Block } from '../flow.ts';
import { type DrawInput, type Page } from '../input.ts';
import { tableBlocks } from '../table-blocks.ts';
import { areaFigure } from './floor-figures.ts';

export function holdingFigures({ brief, layout }: DrawInput, page: Page, pen: HoldingPen, label: string): Block[] {
  const { name: run, length, width, head, gate, path } = pen.brief;
  const size = (value: number): string => printSize(page.kit, value);
  const alley = layout.runs.find((one) => one.name === run);
  const columns: readonly Column[] = [{ title: say('drawings.holding.figure'), align: 'start' }, { title: say('drawings.holding.size'), align: 'end' }];
  const rows = [
    [say('drawings.holding.length'), size(length)],
    [say('drawings.holding.width'), size(width)],
    [say('drawings.holding.diagonals'), size(Math.hypot(length, width))],
    [say('drawings.holding.area'), areaFigure(brief, penArea(pen))],
    [say('drawings.holding.head'), String(head)],
    [say('drawings.holding.each'), areaFigure(brief, penArea(pen) / head, 1)],
    ...(alley === undefined ? [] : [[say('drawings.holding.alley'), size(alley.width)]]),
    [say('drawings.holding.gate', { mark: gateMarks(layout).get(path) ?? '' }), size(gate)],
  ];
  return tableBlocks(page, label, say('drawings.holding.figures', { pen: run }), columns, rows);
}
