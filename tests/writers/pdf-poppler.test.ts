/** Our PDF as poppler reads it: page sizes, true scale, embedded font, texts. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { type PdfInfo, writePdf } from '../../core/writers/index.ts';
import { makePdf } from '../../electron/pdf/index.ts';
import { outside, run } from '../support/outside.ts';
import { inFolder } from '../support/temporary.ts';
import { arc, font, inchSheet, line, pen, sheets, text } from './fixtures.ts';

const info: PdfInfo = { title: 'Juniper Flat', subject: 'Set', author: 'Shop', creator: 'Penwright', date: '2026-03-02' };
const DPI = 300;

/** A page as gray figures, row by row from the top. */
interface Page {
  readonly width: number;
  readonly height: number;
  readonly dark: (x: number, y: number) => boolean;
}

function readPage(file: string): Page {
  const bytes = readFileSync(file);
  const [head = '', width = '', height = ''] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.toString('latin1', 0, 40)) ?? [];
  const size = { width: Number(width), height: Number(height) };
  return { ...size, dark: (x, y) => (bytes[head.length + y * size.width + x] ?? 255) < 128 };
}

/** Lengths of dark runs along a row, or a column, through a point; all in pixels. */
function runs(page: Page, along: 'x' | 'y', at: number): { from: number; length: number }[] {
  const out: { from: number; length: number }[] = [];
  const end = along === 'x' ? page.width : page.height;
  for (let k = 0; k < end; k += 1) {
    if (!(along === 'x' ? page.dark(k, at) : page.dark(at, k))) continue;
    const last = out.at(-1);
    if (last !== undefined && last.from + last.length === k) last.length += 1;
    else out.push({ from: k, length: 1 });
  }
  return out;
}

/** A 10 in line across and one up, a dashed line, and a quarter circle of 3 in. */
const ruler = {
  ...inchSheet,
  primitives: [
    line(2, 9, 12, 9, pen('STEEL', 'thin')), line(0.75, 0.5, 0.75, 10.5, pen('STEEL', 'thin')), line(2, 8, 12, 8, pen('HIDDEN', 'thick', 'hidden')),
    arc(4, 2, 3, 0, Math.PI / 2, pen('STEEL', 'thick')), text('ruler', 13, 9),
  ],
};

describe.skipIf(!outside('poppler'))('a PDF read by poppler', () => {
  let page: Page;
  let facts: string;
  let fonts: string;
  let words: string;
  beforeAll(async () => {
    const files = { 'all.pdf': await writePdf(sheets, font, info, makePdf), 'ruler.pdf': await writePdf([ruler], font, info, makePdf) };
    await inFolder(files, (folder) => {
      run('pdftoppm', ['-r', String(DPI), '-gray', '-singlefile', join(folder, 'ruler.pdf'), join(folder, 'ruler')]);
      page = readPage(join(folder, 'ruler.pgm'));
      facts = run('pdfinfo', ['-f', '1', '-l', '3', '-isodates', join(folder, 'all.pdf')]);
      fonts = run('pdffonts', [join(folder, 'all.pdf')]);
      words = run('pdftotext', ['-raw', join(folder, 'all.pdf'), '-']);
    });
  });

  test('pages are as large as their paper', () => {
    expect([...facts.matchAll(/Page +\d+ size: +([\d.]+) x ([\d.]+) pts/g)].map((match) => `${match[1] ?? ''} ${match[2] ?? ''}`)).toEqual(['1224 792', '1224 792', '1190.55 841.89']);
    expect(facts).toMatch(/Title: +Juniper Flat/);
    expect(facts).toMatch(/CreationDate: +2026-03-02T00:00:00Z/);
    expect([page.width, page.height]).toEqual([17 * DPI, 11 * DPI]);
  });

  test('ten inches are ten inches, within a pixel at 300 dpi', () => {
    const across = runs(page, 'x', 2 * DPI);
    const up = runs(page, 'y', 0.75 * DPI);
    const [long] = across.filter((item) => item.length > DPI);
    const [tall] = up.filter((item) => item.length > DPI);
    expect(Math.abs(long!.length - 10 * DPI)).toBeLessThanOrEqual(1);
    expect(Math.abs(long!.from - 2 * DPI)).toBeLessThanOrEqual(1);
    expect(Math.abs(tall!.length - 10 * DPI)).toBeLessThanOrEqual(1);
    expect(Math.abs(tall!.from - 0.5 * DPI)).toBeLessThanOrEqual(1);
  });

  test('thin is 0.3 mm and thick is 0.6 mm, within a pixel', () => {
    const widths = runs(page, 'y', Math.round(2.05 * DPI)).map((item) => item.length);
    expect(Math.abs((widths[0] ?? 0) - (0.3 / 25.4) * DPI)).toBeLessThanOrEqual(1);
    expect(Math.abs((widths[1] ?? 0) - (0.6 / 25.4) * DPI)).toBeLessThanOrEqual(1);
  });

  test('dashes are 0.12 in with gaps of 0.06 in, within a pixel', () => {
    const dashes = runs(page, 'x', 3 * DPI).filter((item) => item.from > 1.5 * DPI).slice(0, -1);
    expect(dashes).toHaveLength(Math.floor(10 / 0.18));
    for (const [k, dash] of dashes.entries()) {
      expect(Math.abs(dash.length - 0.12 * DPI)).toBeLessThanOrEqual(1);
      expect(Math.abs(dash.from - (2 + 0.18 * k) * DPI)).toBeLessThanOrEqual(1);
    }
  });

  test('an arc is an arc: 3 in from its center, and only where it was drawn', () => {
    const dark = (angle: number, radius: number): boolean =>
      page.dark(Math.floor((4 + radius * Math.cos(angle)) * DPI), Math.floor((11 - 2 - radius * Math.sin(angle)) * DPI));
    for (let angle = 0.01; angle < Math.PI / 2; angle += 0.01) {
      expect(dark(angle, 3), String(angle)).toBe(true);
      expect(dark(angle, 3 - 0.02) || dark(angle, 3 + 0.02), String(angle)).toBe(false);
    }
    for (let angle = Math.PI / 2 + 0.02; angle < 2 * Math.PI - 0.02; angle += 0.02) expect(dark(angle, 3), String(angle)).toBe(false);
  });

  test('the font is embedded, a subset, and read back as letters', () => {
    const rows = fonts.trim().split('\n').slice(2);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatch(/NotoSans-SemiCondensed +CID TrueType +Identity-H +yes yes yes/);
  });

  test('texts are found, also one whose character the font lacks', () => {
    for (const found of [`12'-3 5/8" [147.625]`, 'Ø 2 3/8 at 22.5° ± 1', 'Räuberhöhle Łódź Ёлка Ωμέγα', '%%d is no degree', '<b>&amp; "quotes"</b> ]]>', '🐄', 'R12', 'P-4']) {
      expect(words).toContain(found);
    }
  });
});
