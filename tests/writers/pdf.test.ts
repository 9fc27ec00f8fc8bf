/** Sheets drawn on a page: what is asked of the library, and that its bytes are always the same. */
import { afterEach, describe, expect, test, vi } from 'vitest';
import { distance } from '../../core/base/points.ts';
import { type Primitive } from '../../core/drafting/primitives.ts';
import { type MakePdf, type PdfInfo, type PdfText, writePdf } from '../../core/writers/index.ts';
import { bezierArc } from '../../core/writers/pdf/bezier-arc.ts';
import { makePdf } from '../../electron/pdf/index.ts';
import { arc, coverSheet, dot, fill, font, inchSheet, line, metricSheet, pen, sheets, text } from './fixtures.ts';

const info: PdfInfo = { title: 'Juniper Flat', subject: 'Set', author: 'Shop', creator: 'Penwright', date: '2026-03-02' };

/** A library that writes down what it is told. */
function recorder(): { told: string[]; texts: PdfText[]; make: MakePdf } {
  const told: string[] = [];
  const texts: PdfText[] = [];
  const note = (...parts: readonly unknown[]): void => { told.push(parts.map((part) => (typeof part === 'number' ? Number(part.toFixed(6)) : part)).join(' ')); };
  const make: MakePdf = () => ({
    addPage: (width, height, title) => {
      note('page', width, height, title);
      return {
        pen: (thick, dash) => { note('pen', thick, dash.map((part) => part.toFixed(2)).join('+')); },
        moveTo: (x, y) => { note('move', x, y); },
        lineTo: (x, y) => { note('line', x, y); },
        curveTo: (...figures) => { note('curve', ...figures); },
        stroke: () => { note('stroke'); },
        fill: () => { note('fill'); },
        text: (item) => { texts.push(item); },
      };
    },
    finish: () => Promise.resolve(new Uint8Array()),
  });
  return { told, texts, make };
}

async function told(...primitives: Primitive[]): Promise<string[]> {
  const record = recorder();
  await writePdf([{ ...inchSheet, primitives }], font, info, record.make);
  return record.told.slice(1);
}

describe('a sheet on a page', () => {
  test('a page is as large as its paper, 72 points an inch', async () => {
    const record = recorder();
    await writePdf(sheets.map((sheet) => ({ ...sheet, primitives: [] })), font, info, record.make);
    expect(record.told).toEqual([
      'page 1224 792 100 plan & <odd> "sheet"', 'page 1224 792 101 plan & <odd> "sheet"', 'page 1190.551181 841.889764 102 plan & <odd> "sheet"',
    ]);
  });

  test('lines have the weights 0.6 and 0.3 mm, dashes are paper inches, and one pen is told once', async () => {
    expect(await told(line(1, 2, 3, 4), line(1, 2, 5, 4), line(1, 2, 3, 4, pen('HIDDEN', 'thin', 'hidden')))).toEqual([
      'pen 1.700787 ', 'move 72 144', 'line 216 288', 'stroke', 'move 72 144', 'line 360 288', 'stroke',
      'pen 0.850394 8.64+4.32', 'move 72 144', 'line 216 288', 'stroke',
    ]);
  });

  test('a fill is filled, a dot too', async () => {
    expect(await told(fill('SIZES', [1, 1], [2, 1], [2, 1.5]))).toEqual(['move 72 72', 'line 144 72', 'line 144 108', 'fill']);
    expect((await told(dot(2, 2, 0.05))).at(-1)).toBe('fill');
  });

  test('a text starts at the start of its baseline', async () => {
    const record = recorder();
    await writePdf([{ ...inchSheet, primitives: [text('abc', 5, 6, 'end', Math.PI / 2), text('🐄', 1, 1)] }], font, info, record.make);
    const [word, cow] = record.texts;
    expect(word).toMatchObject({ text: 'abc', x: 360, rotation: Math.PI / 2, lacking: false });
    expect(word!.y).toBeCloseTo(432 - word!.width, 9);
    expect(word!.size).toBeCloseTo((0.1 * 72 * font.unitsPerEm) / font.capHeight, 9);
    expect(cow).toMatchObject({ text: '🐄', lacking: true });
  });

  test('the curves of an arc stray from it by less than 1e-7 of its radius, and end where it ends', () => {
    const center = { x: 3, y: -2 };
    for (const [radius, start, sweep] of [[1, 0.3, 2 * Math.PI], [48, -1, -0.7], [1000, 2, 0.001], [5, 0, -6]] as const) {
      let from = { x: center.x + radius * Math.cos(start), y: center.y + radius * Math.sin(start) };
      for (const [one, two, end] of bezierArc(center, radius, start, sweep)) {
        for (let t = 0; t <= 1; t += 0.05) {
          const [a, b, c, d] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
          const at = { x: a * from.x + b * one.x + c * two.x + d * end.x, y: a * from.y + b * one.y + c * two.y + d * end.y };
          expect(Math.abs(distance(center, at) - radius)).toBeLessThan(1e-7 * radius);
        }
        from = end;
      }
      expect(distance(from, { x: center.x + radius * Math.cos(start + sweep), y: center.y + radius * Math.sin(start + sweep) })).toBeLessThan(1e-9 * radius);
    }
  });

  test('a PDF of no sheets is thrown', () => {
    expect(() => writePdf([], font, info, recorder().make)).toThrow('no sheets');
  });
});

describe('the bytes of a PDF', () => {
  const zone = process.env['TZ'];
  afterEach(() => {
    vi.useRealTimers();
    if (zone === undefined) delete process.env['TZ'];
    else process.env['TZ'] = zone;
  });

  test('are the same at any hour and in any time zone', async () => {
    const written = async (timeZone: string, now: string): Promise<Buffer> => {
      process.env['TZ'] = timeZone;
      vi.useFakeTimers({ now: new Date(now), toFake: ['Date'] });
      return Buffer.from(await writePdf(sheets, font, info, makePdf));
    };
    const one = await written('America/Denver', '2026-03-02T01:00:00Z');
    const two = await written('Pacific/Auckland', '2031-12-31T23:59:59Z');
    expect(one.equals(two)).toBe(true);
    expect(one.toString('latin1')).toContain('(D:20260302000000Z)');
    expect(one.toString('latin1')).not.toContain('FlateDecode');
  });

  test('are dated 1980-01-01 where the project has no date, and a date that is none is thrown', async () => {
    const file = Buffer.from(await writePdf([coverSheet], font, { ...info, date: null }, makePdf)).toString('latin1');
    expect(file).toContain('(D:19800101000000Z)');
    expect(() => writePdf([coverSheet], font, { ...info, date: '2026-13-40' }, makePdf)).toThrow('2026-13-40');
  });

  test('differ where a sheet differs', async () => {
    const write = async (sheet: typeof inchSheet): Promise<Buffer> => Buffer.from(await writePdf([sheet], font, info, makePdf));
    expect((await write(inchSheet)).equals(await write(metricSheet))).toBe(false);
  });

  test('a figure that is none is thrown', () => {
    expect(() => writePdf([{ ...coverSheet, primitives: [arc(1, 1, NaN, 0, 1)] }], font, info, makePdf)).toThrow('NaN');
  });
});
