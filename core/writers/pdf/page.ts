/** What a PDF library must do for us. Points (1/72 in), origin at the lower left corner of the page, y up. */

export interface PdfPage {
  /** Width of lines from here on, and their dashes, on and off by turns; none for a line without gaps. */
  pen(width: number, dash: readonly number[]): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  /** A cubic Bézier curve by its two control points and its end. */
  curveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void;
  /** Strokes what was drawn since the last stroke or fill, or closes and fills it, in black. */
  stroke(): void;
  fill(): void;
  text(text: PdfText): void;
}

export interface PdfText {
  readonly text: string;
  /** Start of the baseline. */
  readonly x: number;
  readonly y: number;
  /** Size of the em. */
  readonly size: number;
  /** Radians, counter-clockwise. */
  readonly rotation: number;
  /** As measured by the font's metrics: the text is drawn as wide as this. */
  readonly width: number;
  /** Whether the font lacks one of its characters. */
  readonly lacking: boolean;
}

export interface PdfFile {
  /** A further page, which the document's outline lists by its title. */
  addPage(width: number, height: number, title: string): PdfPage;
  /** Ends the file. No page is drawn on after it. */
  finish(): Promise<Uint8Array>;
}

/** What a file says of itself. */
export interface PdfInfo {
  readonly title: string;
  readonly subject: string;
  readonly author: string;
  readonly creator: string;
  /** `YYYY-MM-DD`, the revision's; null where the project has none: 1980-01-01. */
  readonly date: string | null;
}

export type MakePdf = (info: PdfInfo, font: Uint8Array) => PdfFile;
