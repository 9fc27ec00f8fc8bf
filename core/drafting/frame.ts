/** The border and the title block along the foot of every drawing. */
import { say } from '../text/index.ts';
import { type Rect } from './boxes.ts';
import { type TitleBlock } from './model.ts';
import { type Kit, PENS, makeText, measureText } from './kit.ts';
import { type Paper, type Stroke } from './primitives.ts';
import { lineStroke, toSheet } from './strokes.ts';
import { wrapText } from './wrap.ts';

/** From the paper's edge to the border, inches: what most printers can't reach. */
const MARGIN = 0.35;
/** Shares of the title block's width: project and client, drawing, scale and dates, number and revision. */
const SHARES = [0.3, 0.3, 0.24, 0.16] as const;
/** Lines kept for a drawing's title, so that every drawing of a set has one title block. */
const TITLE_LINES = 3;

export interface FrameText {
  readonly number: string;
  readonly title: string;
  readonly scaleText: string;
}

const padOf = (kit: Kit): number => kit.clear + 0.05;

function columns(paper: Paper): { readonly x: number; readonly width: number }[] {
  const inner = paper.width - 2 * MARGIN;
  let x = MARGIN;
  return SHARES.map((share) => {
    const column = { x, width: inner * share };
    x += column.width;
    return column;
  });
}

function cells(kit: Kit, paper: Paper, block: TitleBlock, text: FrameText): string[][] {
  const widths = columns(paper).map((column) => column.width - 2 * padOf(kit));
  const wrap = (column: number, line: string): string[] => (line === '' ? [] : wrapText(kit, line, widths[column]!));
  return [
    [...wrap(0, block.project), ...wrap(0, block.client)],
    [...wrap(1, text.title), ...wrap(1, say('drawings.frame.caution'))],
    [
      ...wrap(2, say('drawings.frame.scale', { scale: text.scaleText })),
      ...wrap(2, say(block.units === 'in' ? 'drawings.frame.unitsIn' : 'drawings.frame.unitsMm')),
      ...wrap(2, say('drawings.frame.tolerance')),
      ...wrap(2, say('drawings.frame.verify')),
    ],
    [
      ...wrap(3, say('drawings.frame.number', { number: text.number })),
      ...wrap(3, say('drawings.frame.revision', { letter: block.revision })),
      ...wrap(3, say('drawings.frame.date', { date: block.date === '' ? '-' : block.date })),
      ...wrap(3, say('drawings.frame.drawn')),
      ...wrap(3, say('drawings.frame.checked')),
    ],
  ];
}

/** Height of the title block: the same for all drawings of a set on one paper. */
export function blockHeight(kit: Kit, paper: Paper, block: TitleBlock): number {
  const sample: FrameText = { number: '000', title: 'x', scaleText: '3/16" = 1\'-0" (1:64)' };
  const lists = cells(kit, paper, block, sample);
  const lines = Math.max(lists[0]!.length, lists[1]!.length - 1 + TITLE_LINES, lists[2]!.length, lists[3]!.length);
  return lines * kit.pitch + 2 * padOf(kit);
}

/** What is left for views and tables, clear of the border. */
export function roomInside(kit: Kit, paper: Paper, block: TitleBlock): Rect {
  const pad = 0.12;
  const foot = MARGIN + blockHeight(kit, paper, block);
  return { x: MARGIN + pad, y: foot + pad, width: paper.width - 2 * (MARGIN + pad), height: paper.height - MARGIN - foot - 2 * pad };
}

/** A drawing's title cut to what the title block holds. */
export function fitTitle(kit: Kit, paper: Paper, title: string): string {
  const width = columns(paper)[1]!.width - 2 * padOf(kit);
  if (wrapText(kit, title, width).length <= TITLE_LINES) return title;
  const words = title.split(' ');
  const cut = (count: number): string => `${words.slice(0, count).join(' ')} …`;
  // Fewer words never take more lines: the most that fit, at least one, lie between two counts that close on each other.
  let fits = 1;
  let over = words.length + 1;
  while (over - fits > 1) {
    const count = Math.floor((fits + over) / 2);
    if (wrapText(kit, cut(count), width).length <= TITLE_LINES) fits = count;
    else over = count;
  }
  return cut(fits);
}

export function frameStrokes(kit: Kit, paper: Paper, block: TitleBlock, text: FrameText): Stroke[] {
  const left = MARGIN;
  const right = paper.width - MARGIN;
  const top = paper.height - MARGIN;
  const foot = MARGIN + blockHeight(kit, paper, block);
  const corner = [
    { x: left, y: MARGIN },
    { x: right, y: MARGIN },
    { x: right, y: top },
    { x: left, y: top },
  ];
  const strokes: Stroke[] = corner.map((a, i) => lineStroke(PENS.frame, a, corner[(i + 1) % 4]!));
  strokes.push(lineStroke(PENS.frame, { x: left, y: foot }, { x: right, y: foot }));
  const all = cells(kit, paper, block, text);
  columns(paper).forEach((column, i) => {
    if (i > 0) strokes.push(lineStroke(PENS.rule, { x: column.x, y: MARGIN }, { x: column.x, y: foot }));
    all[i]!.forEach((line, row) => {
      const at = { x: column.x + padOf(kit), y: foot - padOf(kit) - kit.up - row * kit.pitch };
      if (measureText(kit, line) > 0) strokes.push(makeText(kit, 'FRAME', line, toSheet(at), 'start'));
    });
  });
  return strokes;
}
