/** A page of pdfkit, which counts y down from the top, as a page of ours, which counts it up. */
import { type PdfPage, type PdfText } from '../../core/writers/pdf/page.ts';

/** Features of a font that move or join letters, off: a text is the sum of its advances. Typed as a list, taken as an object too. */
const PLAIN = { kern: false, liga: false, clig: false, rlig: false, calt: false, ccmp: false } as unknown as PDFKit.Mixins.OpenTypeFeatures[];

/** The page that `document` is on now, `height` points high. A path goes to the library whole, which is twice as fast as by its points. */
export function pdfkitPage(document: PDFKit.PDFDocument, height: number): PdfPage {
  let path: string[] = [];
  const point = (x: number, y: number): string => `${figure(x)} ${figure(height - y)}`;
  const end = (operator: string): void => {
    document.addContent(`${path.join(' ')} ${operator}`);
    path = [];
  };
  return {
    pen: (width, dash) => {
      document.addContent(`${figure(width)} w [${dash.map(figure).join(' ')}] 0 d`);
    },
    moveTo: (x, y) => {
      path.push(point(x, y), 'm');
    },
    lineTo: (x, y) => {
      path.push(point(x, y), 'l');
    },
    curveTo: (x1, y1, x2, y2, x, y) => {
      path.push(point(x1, y1), point(x2, y2), point(x, y), 'c');
    },
    stroke: () => {
      end('S');
    },
    fill: () => {
      end('f');
    },
    text: (text) => {
      placeText(document, text, height);
    },
  };
}

/** A figure of a page to 1e-4 point, far under what any printer sets. */
function figure(value: number): string {
  if (!(Math.abs(value) < 1e9)) throw new Error(`not a figure that can be drawn: ${String(value)}`);
  return String(Math.round(value * 1e4) / 1e4);
}

/**
 * Places a text from the start of its baseline. It is drawn as wide as it was measured: where the library leaves a character out
 * (a soft hyphen), the rest is spread. A character that the font lacks is drawn as its empty box, and read aloud as itself.
 */
function placeText(document: PDFKit.PDFDocument, text: PdfText, height: number): void {
  document.fontSize(text.size);
  const natural = document.widthOfString(text.text, { features: PLAIN });
  const stretch = natural > 0 ? (100 * text.width) / natural : 100;
  const options = {
    lineBreak: false,
    baseline: 'alphabetic' as const,
    features: PLAIN,
    rotation: (text.rotation * 180) / Math.PI,
    // The library would measure it once more.
    textWidth: natural,
    wordCount: 1,
    horizontalScaling: Math.abs(stretch - 100) > 1e-4 ? Number(stretch.toFixed(4)) : 100,
  };
  if (text.lacking) document.markContent('Span', { actual: text.text });
  document.text(text.text, text.x, height - text.y, options);
  if (text.lacking) document.endMarkedContent();
}
