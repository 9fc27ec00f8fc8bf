/** The PDF library behind the writers' interface: pdfkit, uncompressed, its date from the project. */
import PDFDocument from 'pdfkit';
import { type MakePdf, type PdfInfo } from '../../core/writers/pdf/page.ts';
import { pdfkitPage } from './pdfkit-page.ts';

/** The date of a file whose project gives none. */
const NO_DATE = '1980-01-01';

/** Starts a PDF. The same information, font and drawing give the same bytes, in any time zone and language. */
export const makePdf: MakePdf = (info, font) => {
  const document = new PDFDocument({
    autoFirstPage: false,
    compress: false,
    pdfVersion: '1.7',
    displayTitle: true,
    lang: 'en-US',
    // Typed as a name, taken as bytes too: without it a built-in font is looked up on disk.
    font: font as unknown as string,
    info: documentInfo(info),
  });
  const parts: Uint8Array[] = [];
  const ended = new Promise<void>((resolve, reject) => {
    document.on('data', (part: Uint8Array) => parts.push(part));
    document.on('end', resolve);
    document.on('error', reject);
  });
  return {
    addPage: (width, height, title) => {
      document.addPage({ size: [width, height], margin: 0 });
      document.outline.addItem(title);
      return pdfkitPage(document, height);
    },
    finish: async () => {
      document.end();
      await ended;
      return joined(parts);
    },
  };
};

function documentInfo(info: PdfInfo): PDFKit.DocumentInfo {
  const date = new Date(`${info.date ?? NO_DATE}T00:00:00Z`);
  if (Number.isNaN(date.getTime())) throw new Error(`not a date: ${String(info.date)}`);
  return { Title: info.title, Subject: info.subject, Author: info.author, Creator: info.creator, CreationDate: date };
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const out = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    out.set(part, at);
    at += part.length;
  }
  return out;
}
