/** The page that templates are printed on: Letter or A4, its head, and the bar that proves the scale on every page. */
import { inches } from '../../base/quantity.ts';
import { sheetPoint, type Vec } from '../../base/points.ts';
import { type Brief } from '../../brief/index.ts';
import { type Rect } from '../../drafting/boxes.ts';
import { type Font } from '../../drafting/font.ts';
import { type Kit, makeKit, makeText, measureText, PENS } from '../../drafting/kit.ts';
import { paperNamed } from '../../drafting/paper.ts';
import { type Paper, type Sheet, type Stroke } from '../../drafting/primitives.ts';
import { lineStroke } from '../../drafting/strokes.ts';
import { wrapText } from '../../drafting/wrap.ts';
import { say } from '../../text/index.ts';
import { checkBars } from './template-words.ts';

/** What most printers can't reach at the paper's edge, inches. */
const MARGIN = 0.4;
/** Of the ticks at a bar's ends. */
const TICK = 0.12;

export interface TemplatePage {
  readonly paper: Paper;
  readonly kit: Kit;
  /** Left for the template and its words, between head and bar. */
  readonly room: Rect;
}

/** What any office prints: the sheet that the report takes too. Larger paper would be fitted to the page unasked. */
export function templatePage(font: Font, brief: Brief): TemplatePage {
  const paper = paperNamed(brief.paper.startsWith('ISO') ? 'ISO A4' : 'ANSI A');
  const kit = makeKit(font, brief.units, paper);
  const width = paper.width - 2 * MARGIN;
  const foot = MARGIN + footHeight(kit, brief.units, width);
  const head = headLines(kit, brief, say('template.notes-title', { name: 'W'.repeat(14), page: 99, pages: 99 }), width).length * kit.pitch;
  return { paper, kit, room: { x: MARGIN, y: foot, width, height: paper.height - MARGIN - head - 0.1 - foot } };
}

function headLines(kit: Kit, brief: Brief, title: string, width: number): readonly string[] {
  const { letter, date } = brief.revision;
  const project = say('template.project', { project: brief.title, letter, date: date === '' ? '-' : date });
  return [...wrapText(kit, title, width), ...wrapText(kit, project, width)];
}

const footHeight = (kit: Kit, units: 'in' | 'mm', width: number): number =>
  wrapText(kit, say('template.print'), width).length * kit.pitch + checkBars(units).length * (kit.pitch + TICK) + 0.15;

/** A page of a template, its head and its bars drawn. */
export function templateSheet({ paper, kit, room }: TemplatePage, brief: Brief, name: string, title: string, strokes: readonly Stroke[]): Sheet {
  const top = paper.height - MARGIN;
  const words = headLines(kit, brief, title, room.width).map((line, i) => textAt(kit, line, { x: room.x, y: top - kit.up - kit.clear - i * kit.pitch }));
  const foot: Stroke[] = [];
  let y = room.y - 0.1;
  for (const line of wrapText(kit, say('template.print'), room.width)) {
    foot.push(textAt(kit, line, { x: room.x, y: y - kit.up - kit.clear }));
    y -= kit.pitch;
  }
  for (const bar of checkBars(brief.units)) {
    const at = y - (kit.pitch + TICK) / 2;
    const end = room.x + bar.length;
    foot.push(
      lineStroke(PENS.size, { x: room.x, y: at }, { x: end, y: at }),
      ...[room.x, end].map((x) => lineStroke(PENS.size, { x, y: at - TICK }, { x, y: at + TICK })),
      textAt(kit, bar.words, { x: end + 0.12, y: at - (kit.up - kit.down) / 2 }),
    );
    y -= kit.pitch + TICK;
  }
  return { number: name, title, file: name, paper, scale: 1, units: brief.units, views: [], primitives: [...words, ...foot, ...strokes] };
}

export const textAt = (kit: Kit, text: string, at: Vec, rotation: 0 | 1 = 0): Extract<Stroke, { kind: 'text' }> => ({
  ...makeText(kit, 'NOTES', text, sheetPoint(at.x, at.y), 'start'),
  rotation: (rotation * Math.PI / 2) as Extract<Stroke, { kind: 'text' }>['rotation'],
  width: inches(measureText(kit, text)),
});
