/** Our SVG as a browser shows it: every text as wide as it was measured, in the embedded font, inside the paper. */
import { chromium } from '@playwright/test';
import { beforeAll, describe, expect, test } from 'vitest';
import { type TextStroke } from '../../core/writers/baseline.ts';
import { LAYERS, strokesOf } from '../../core/drafting/primitives.ts';
import { writeSvg } from '../../core/writers/index.ts';
import { CHROMIUM, outside } from '../support/outside.ts';
import { font, inchSheet, sheets } from './fixtures.ts';

interface Measured {
  readonly shown: string;
  /** As drawn, and as it would be without being held to its length; paper inches. */
  readonly held: number;
  readonly free: number;
  readonly box: readonly [left: number, top: number, right: number, bottom: number];
}

/** In the order of the file: a group a layer. */
const texts = LAYERS.flatMap((layer) => strokesOf(inchSheet.primitives).filter((stroke): stroke is TextStroke => stroke.kind === 'text' && stroke.layer === layer));

/** Written so that the font covers it, and no character that a browser leaves out. */
const plain = (text: string): boolean => [...text].every((char) => font.has(char.codePointAt(0) ?? 0) && char !== '\u00ad') && !/\p{Cc}|\p{Zl}/u.test(text);

describe.skipIf(!outside('chromium'))('an SVG in a browser', () => {
  let measured: Measured[];
  let family: string;
  let faults: string[];
  beforeAll(async () => {
    const browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox'] });
    try {
      const page = await browser.newPage({ viewport: { width: 1632, height: 1056 } });
      await page.setContent(`<!doctype html><body style="margin:0">${writeSvg(inchSheet, font).replace(/^<\?xml.*\n/, '')}`);
      await page.evaluate(async () => { await document.fonts.ready; });
      family = await page.evaluate(() => [...document.fonts].map((face) => `${face.family} ${face.status}`).join());
      faults = await page.evaluate((files) => files.map((file) => new DOMParser().parseFromString(file, 'image/svg+xml').querySelector('parsererror')?.textContent ?? ''), sheets.map((sheet) => writeSvg(sheet, font)));
      measured = await page.evaluate(() => {
        const drawing = document.querySelector<SVGGElement>('#drawing');
        if (drawing === null) throw new Error('no drawing');
        return [...drawing.querySelectorAll('text')].map((element) => {
          const held = element.getComputedTextLength();
          const box = element.getBoundingClientRect();
          element.removeAttribute('textLength');
          return { shown: element.textContent, held, free: element.getComputedTextLength(), box: [box.left, box.top, box.right, box.bottom] as const };
        });
      });
    } finally {
      await browser.close();
    }
  });

  test('it is sound XML, whatever a person typed', () => {
    expect(faults).toEqual(sheets.map(() => ''));
  });

  test('the embedded font is read', () => {
    expect(family.replaceAll('"', '')).toBe('penwright-drawing loaded');
  });

  test('every text is shown, inside the paper', () => {
    expect(measured).toHaveLength(texts.length);
    for (const { shown, box: [left, top, right, bottom] } of measured) expect(left >= 0 && top >= 0 && right <= 17 * 96 && bottom <= 11 * 96, `${shown} ${String([left, top, right, bottom])}`).toBe(true);
  });

  test('a text of the font’s own characters is as wide as measured, within 1 %, by its advances alone', () => {
    const free = texts.map((text, k) => ({ text, k })).filter(({ text }) => plain(text.text) && text.width > 0);
    expect(free.length).toBeGreaterThan(20);
    for (const { text, k } of free) expect(Math.abs(measured[k]!.free / text.width - 1), text.text).toBeLessThan(0.01);
  });

  test('any other text is held to its measured width, within 1 %', () => {
    for (const [k, text] of texts.entries()) if (text.width > 0) expect(Math.abs(measured[k]!.held / text.width - 1), text.text).toBeLessThan(0.01);
  });
});
