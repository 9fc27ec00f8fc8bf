/** Sheets as a PDF, a page each. */
import { type Font } from '../../drafting/font.ts';
import { type Sheet } from '../../drafting/primitives.ts';
import { type MakePdf, type PdfInfo } from './page.ts';
import { drawSheet } from './draw-sheet.ts';
import { POINTS } from './points.ts';

/**
 * Writes sheets as one PDF through a library that is handed in. Each page is as large as its paper, and drawn at true scale.
 * The same sheets and information give the same bytes. Throws where there is no sheet: a PDF has a page at least.
 */
export function writePdf(sheets: readonly Sheet[], font: Font, info: PdfInfo, makePdf: MakePdf): Promise<Uint8Array> {
  if (sheets.length === 0) throw new Error('a PDF of no sheets');
  const file = makePdf(info, font.bytes);
  for (const sheet of sheets) {
    const page = file.addPage(sheet.paper.width * POINTS, sheet.paper.height * POINTS, `${sheet.number} ${sheet.title}`);
    drawSheet(page, sheet, font);
  }
  return file.finish();
}
