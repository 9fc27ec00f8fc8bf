import { type Brief } from '../../brief/index.ts';
import { type Font } from '../../drafting/font.ts';
import { type Sheet, type Stroke } from '../../drafting/primitives.ts';
import { wrapText } from '../../drafting/wrap.ts';
import { sampleWrap, wrapOf, type Template } from '../../shop/templates/index.ts';
import { say } from '../../text/index.ts';
import { templatePage, templateSheet, textAt, type TemplatePage } from './template-page.ts';
import { tileStrokes } from './template-tile.ts';
import { templateWords } from './template-words.ts';
import { tilesOf } from './tiles.ts';
import { wrapLines } from './wrap-lines.ts';

/** Between a template and the words under it, inches. */
const BETWEEN = 0.25;

/** A template at full size, over as many pages as it takes, with what it is for and how to use it. */
export function templateSheets(font: Font, brief: Brief, template: Template): readonly Sheet[] {
  const page = templatePage(font, brief);
  const { kit, room } = page;
  const wrap = wrapOf(template.cope);
  const flat = { name: template.name, cut: sampleWrap(wrap), lines: wrapLines(template.cope, wrap) };
  const columns = tilesOf(wrap.around, room.width);
  const rows = tilesOf(wrap.high, room.height);
  const letters = matchLetters([...columns, ...rows].map(({ after }) => after), columns.length);
  const parts = rows.flatMap((row) => columns.map((column): { readonly strokes: readonly Stroke[]; readonly foot: number } => {
    const foot = room.y + room.height - (row.to - row.from);
    return { strokes: tileStrokes(kit, flat, column, row, { x: room.x, y: foot }, letters), foot };
  }));
  const pages = parts.map(({ strokes }) => [...strokes]);
  let left = templateWords(brief.units, template, wrap).flatMap((words) => wrapText(kit, words, room.width));
  const take = (top: number): readonly Stroke[] => {
    const count = Math.max(0, Math.floor((top - room.y) / kit.pitch));
    const strokes = lineStrokes(page, left.slice(0, count), top);
    left = left.slice(count);
    return strokes;
  };
  // As many words as have room stand under a template of one page, the rest on pages of their own.
  if (parts.length === 1) pages[0]!.push(...take(parts[0]!.foot - BETWEEN));
  while (left.length > 0) pages.push([...take(room.y + room.height)]);
  return pages.map((strokes, i) => {
    const title = say(i < parts.length ? 'template.title' : 'template.notes-title', { name: template.name, page: i + 1, pages: pages.length });
    return templateSheet(page, brief, template.name, title, strokes);
  });
}

const lineStrokes = ({ kit, room }: TemplatePage, lines: readonly string[], top: number): readonly Stroke[] =>
  lines.map((line, i) => textAt(kit, line, { x: room.x, y: top - kit.up - kit.clear - i * kit.pitch }));

/** A letter for every match line, alike on both pages that it lies on: those up first, then those across. */
function matchLetters(after: readonly (number | null)[], columns: number): (way: 'across' | 'up', at: number) => string {
  const up = after.slice(0, columns).filter((at) => at !== null);
  const across = after.slice(columns).filter((at) => at !== null);
  return (way, at) => {
    const list = way === 'up' ? up : across;
    const nearest = list.reduce((best, other, i) => (Math.abs(other - at) < Math.abs(list[best]! - at) ? i : best), 0);
    return String.fromCharCode(65 + nearest + (way === 'up' ? 0 : up.length));
  };
}
