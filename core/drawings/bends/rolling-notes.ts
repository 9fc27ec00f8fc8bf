import { type Brief } from '../../brief/index.ts';
import { printSize } from '../../drafting/kit.ts';
import { wrapText } from '../../drafting/wrap.ts';
import { sheetPoint } from '../../base/points.ts';
import { say } from '../../text/index.ts';
import { type Block } from '../flow.ts';
import { type Page } from '../input.ts';

/** How to roll and mark, as one block across the page. */
export function rollingNotes({ kit, room }: Page, brief: Brief, label: string): readonly Block[] {
  const lines = [
    say('drawings.bend.howOrder', { springback: String(Math.round(brief.shop.springback * 1000) / 10) }),
    say('drawings.bend.howGrip', { grip: printSize(kit, brief.shop.grip) }),
    say('drawings.bend.howGauge'),
    say('drawings.bend.howMark'),
    say('drawings.bend.howSeam'),
  ];
  const width = room.width - 0.02;
  const height = (lines.reduce((sum, line) => sum + wrapText(kit, line, width).length, 0) + 1) * kit.pitch;
  return [{
    width, height, label,
    place: (x, y) => ({ notes: [{ title: say('drawings.bend.howTitle'), lines, at: sheetPoint(x, y + height), width }] }),
  }];
}
