/** What a whole set of drawings breaks: a piece that is not shown and marked, a mark of no piece, names that are used twice. */
import { type Font } from '../../core/drafting/font.ts';
import { type Callout, type Sheet, strokesOf } from '../../core/drafting/primitives.ts';
import { type Parts, type Piece } from '../../core/parts/types.ts';

/** The row of the piece schedule that a piece is counted in. */
const rowOf = (piece: Piece): string => `${piece.mark}, run ${piece.run}, ${piece.side}, bay ${String(piece.bay)}`;

/** Whether a text bears a mark by itself: R1 is not in R12. */
export function bearsMark(text: string, mark: string): boolean {
  const plain = mark.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(?<![A-Za-z0-9])${plain}(?![A-Za-z0-9])`).test(text);
}

export function setBreaches(sheets: readonly Sheet[], parts: Parts, font: Font): string[] {
  const pieces = new Map(parts.pieces.map((piece) => [piece.key, piece]));
  const callouts = sheets.flatMap((sheet) => sheet.primitives.flatMap((item): Callout[] => (item.kind === 'callout' ? [item] : [])));
  const shown = new Set<string>();
  const out: string[] = [];
  for (const callout of callouts) {
    const marks = callout.strokes.some((stroke) => stroke.kind === 'text' && stroke.layer === 'MARKS');
    if (marks && callout.pieces.length === 0) out.push(`mark "${callout.text}" refers to no piece`);
    for (const key of callout.pieces) {
      const piece = pieces.get(key);
      if (piece === undefined) out.push(`mark "${callout.text}" refers to ${key}, which is no piece`);
      else if (bearsMark(callout.text, piece.mark)) shown.add(rowOf(piece));
      else if (marks) out.push(`mark "${callout.text}" stands on ${key}, whose mark is ${piece.mark}`);
    }
  }
  for (const row of new Set(parts.pieces.map(rowOf))) if (!shown.has(row)) out.push(`no drawing shows and marks ${row}`);
  // Two names that differ in case alone are one file on some disks.
  out.push(...twice('file', sheets.map((sheet) => sheet.file.toLowerCase())), ...twice('number', sheets.map((sheet) => sheet.number)));
  return [...out, ...sheets.flatMap((sheet) => missingGlyphs(sheet, font))];
}

function twice(what: string, names: readonly string[]): string[] {
  return [...new Set(names.filter((name, i) => names.indexOf(name) !== i))].map((name) => `${what} ${name} is used twice`);
}

function missingGlyphs(sheet: Sheet, font: Font): string[] {
  const missing = new Set<string>();
  for (const stroke of strokesOf(sheet.primitives)) {
    if (stroke.kind !== 'text') continue;
    for (const char of stroke.text) if (!font.has(char.codePointAt(0)!)) missing.add(char);
  }
  return missing.size === 0 ? [] : [`${sheet.number}: the font has no ${[...missing].join(' ')}`];
}
