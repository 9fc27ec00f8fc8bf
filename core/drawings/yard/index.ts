/** Holding pens and the return alley; the squeeze pad with its slab, roof and floors; each sort pen: all in plan. */
import { sheetPoint } from '../../base/points.ts';
import { draft } from '../../drafting/draft.ts';
import { printSize } from '../../drafting/kit.ts';
import { type Column, type Drawing } from '../../drafting/model.ts';
import { largerPaper, paperNamed } from '../../drafting/paper.ts';
import { noteHeight } from '../../drafting/table.ts';
import { floorSlabs } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { type Detail, detailView } from '../detail.ts';
import { drawingOf } from '../drawing-of.ts';
import { type Block, flowBlocks, stacked } from '../flow.ts';
import { type DrawInput, type Page, pageOf } from '../input.ts';
import { tableBlocks } from '../table-blocks.ts';
import { areaFigure, volumeFigure } from './floor-figures.ts';
import { yardNotes } from './notes.ts';
import { holdingFigures } from './holding-figures.ts';
import { holdingPlan } from './holding-plan.ts';
import { padPlan } from './pad-plan.ts';
import { penPlan } from './pen-plan.ts';
import { returnPlan } from './return-plan.ts';

const SERIES = '11';

/** On the brief's paper, on a larger one where something has no room; a table and notes alone on a small one. */
export function yardDrawings(input: DrawInput): Drawing[] {
  const { brief, layout } = input;
  const planned = brief.squeezePad !== null || brief.sortPens.length > 0 || layout.holdingPens.length > 0 || brief.returnAlley !== null;
  let paper = paperNamed(planned ? brief.paper : brief.paper.startsWith('ISO') ? 'ISO A4' : 'ANSI A');
  for (;;) {
    const page = pageOf(input, paper);
    const drawings = flowBlocks(page, blocksOf(input, page)).map((filled, i) => drawingOf(page, filled, SERIES, i, titleOf(filled.labels), say('drawings.yard.file')));
    const larger = largerPaper(paper);
    if (larger === null || drawings.every((drawing) => draft(input.font, page.block, drawing).unplaced.length === 0)) return drawings;
    paper = larger;
  }
}

const titleOf = (labels: readonly string[]): string => labels.join(', ');

function blocksOf(input: DrawInput, page: Page): Block[][] {
  const pad = padPlan(input);
  const back = returnPlan(input);
  const floors = say(pad === null ? 'drawings.yard.floorsAlone' : 'drawings.yard.floors');
  return [
    [
      ...(pad === null ? [] : [detailBlock(page, pad, say('drawings.yard.padLabel'), 0.6, 0.94)]),
      ...beside(page, [notesBlock(input, page, floors), ...floorsTable(input, page, floors)]),
    ],
    ...input.layout.holdingPens.map((pen) => {
      const label = say('drawings.holding.penLabel', { pen: pen.brief.name });
      return [detailBlock(page, holdingPlan(input, pen), label, 0.66, 0.96), ...holdingFigures(input, page, pen, label)];
    }),
    ...(back === null ? [] : [[detailBlock(page, back, say('drawings.holding.returnLabel'), 0.96, 0.96)]]),
    ...input.brief.sortPens.map((pen, index) => [detailBlock(page, penPlan(input, pen, index), say('drawings.yard.penLabel', { pen: pen.name }), 0.94, 0.94)]),
  ];
}

/** Blocks as one, where a page is high enough for it. */
function beside(page: Page, blocks: readonly Block[]): readonly Block[] {
  const one = stacked(blocks);
  return one.height <= page.room.height && one.width <= page.room.width ? [one] : blocks;
}

/** A detail as a block that takes these shares of the page. */
function detailBlock(page: Page, detail: Detail, label: string, wide: number, tall: number): Block {
  const width = Math.min(page.room.width, Math.max(page.room.width * wide, 50 * page.kit.h));
  const height = page.room.height * tall;
  return { width, height, label, place: (x, y) => ({ views: [detailView(page, detail, { x, y, width, height }, 9)] }) };
}

function floorsTable(input: DrawInput, page: Page, label: string): Block[] {
  const end = (title: string): Column => ({ title, align: 'end' });
  const columns: readonly Column[] = [
    { title: say('drawings.yard.column.floor'), align: 'start' }, end(say('drawings.yard.column.area')), end(say('drawings.yard.column.thick')),
    end(say('drawings.yard.column.concrete')), end(say('drawings.yard.column.drop')),
  ];
  const rows = floorSlabs(input.brief, input.layout).map(({ run, area, thickness, volume, drop }) =>
    [run, areaFigure(input.brief, area), printSize(page.kit, thickness), volumeFigure(input.brief, volume), printSize(page.kit, drop)]);
  return tableBlocks(page, label, say('drawings.yard.floorsTable'), columns, rows);
}

function notesBlock(input: DrawInput, page: Page, label: string): Block {
  const lines = yardNotes(input.brief).map((line) => `- ${line}`);
  const title = say('drawings.yard.notes');
  const width = page.room.width > 130 * page.kit.h ? page.room.width * 0.34 : Math.min(page.room.width, 70 * page.kit.h);
  const height = noteHeight(page.kit, title, lines, width);
  return { width, height, label, place: (x, y) => ({ notes: [{ title, lines, at: sheetPoint(x, y + height), width }] }) };
}
