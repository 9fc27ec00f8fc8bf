import { type Brief } from '../brief/index.ts';
import { type Font } from '../drafting/font.ts';
import { type Sheet } from '../drafting/primitives.ts';
import { type LinearSolver } from '../shop/linear-solver.ts';
import { say } from '../text/index.ts';
import { type MakePdf, writePdf } from '../writers/index.ts';

/** What the core can't have of its own and is handed. */
export interface PackageTools {
  readonly font: Font;
  readonly makePdf: MakePdf;
  /** The solver that the cut list is planned with, made ready when it is first asked for. Rejects where it can't be had. */
  solver(): Promise<LinearSolver>;
  /** SHA-256 in lower-case hexadecimal. */
  sha256(bytes: Uint8Array): string;
}

/** Sheets as one PDF that bears the project's name and its revision's date. */
export const writeSheets = (sheets: readonly Sheet[], brief: Brief, title: string, tools: PackageTools): Promise<Uint8Array> =>
  writePdf(sheets, tools.font, {
    title: `${brief.title}: ${title}`,
    subject: say('package.pdf-subject', { letter: brief.revision.letter }),
    author: brief.client,
    creator: 'Penwright',
    date: brief.revision.date === '' ? null : brief.revision.date,
  }, tools.makePdf);
