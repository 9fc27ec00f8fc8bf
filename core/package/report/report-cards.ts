/** Findings to act on, two beside each other: a small picture of the place, and what is to be said of it. */
import { type Vec } from '../../base/points.ts';
import { type Rect } from '../../drafting/boxes.ts';
import { type Kit, makeText, PENS } from '../../drafting/kit.ts';
import { type Stroke } from '../../drafting/primitives.ts';
import { lineStroke, toSheet } from '../../drafting/strokes.ts';
import { wrapText } from '../../drafting/wrap.ts';
import { type Block } from './report-blocks.ts';
import { type ReportCard } from './report-data.ts';

export type DrawPlace = (at: Vec, frame: Rect) => Stroke[];

/** Paper inches: a picture's side, and the space between two cards and about a picture. */
const PICTURE = 1.05;
const BETWEEN = 0.25;
const ABOUT = 0.12;

/** The cards as rows of two, each row as high as its higher card. */
export function cardBlocks(kit: Kit, room: Rect, cards: readonly ReportCard[], drawPlace: DrawPlace): Block[] {
  const width = (room.width - BETWEEN) / 2;
  const made = cards.map((card) => cardOf(kit, width, card, drawPlace));
  return Array.from({ length: Math.ceil(made.length / 2) }, (_, row): Block => {
    const pair = made.slice(2 * row, 2 * row + 2);
    const height = Math.max(...pair.map((card) => card.height)) + ABOUT;
    return {
      height,
      withNext: false,
      draw: (top) => [
        ...pair.flatMap((card, index) => card.draw(room.x + index * (width + BETWEEN), top - ABOUT / 2)),
        lineStroke(PENS.rule, { x: room.x, y: top - height }, { x: room.x + room.width, y: top - height }),
      ],
    };
  });
}

interface Card {
  readonly height: number;
  draw(left: number, top: number): Stroke[];
}

function cardOf(kit: Kit, width: number, { lines, at }: ReportCard, drawPlace: DrawPlace): Card {
  const inset = at === null ? 0 : PICTURE + ABOUT;
  const wrapped = lines.flatMap((line) => wrapText(kit, line, width - inset - 2 * kit.clear));
  const words = wrapped.length * kit.pitch;
  return {
    height: Math.max(words, at === null ? 0 : PICTURE),
    draw: (left, top) => [
      ...wrapped.map((text, row) => makeText(kit, 'NOTES', text, toSheet({ x: left + inset, y: top - kit.up - kit.clear - row * kit.pitch }), 'start')),
      ...(at === null ? [] : drawPlace(at, { x: left, y: top - PICTURE, width: PICTURE, height: PICTURE })),
    ],
  };
}
