/** Figures, texts and bytes in the forms that every file shares. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { base64 } from '../../core/writers/base64.ts';
import { cleanText } from '../../core/writers/clean-text.ts';
import { fontNames } from '../../core/writers/dxf/font-names.ts';
import { fixedNumber, plainNumber } from '../../core/writers/plain-number.ts';
import { font } from './fixtures.ts';

describe('a figure', () => {
  test('is written in decimals, without what says nothing', () => {
    expect([1, 1.5, -2.25, 1e-7, -1e-7, 0, -0, 100, 123456.789].map((figure) => plainNumber(figure, 6))).toEqual(['1', '1.5', '-2.25', '0', '0', '0', '0', '100', '123456.789']);
    expect([1, -0.00001, 116.58495].map((figure) => fixedNumber(figure, 4))).toEqual(['1.0000', '0.0000', '116.5850']);
    expect(plainNumber(1200, 0)).toBe('1200');
  });

  test('reads back within half of its last place, with no exponent and no minus zero', () => {
    fc.assert(fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (figure) => {
      const text = plainNumber(figure, 8);
      expect(text).toMatch(/^(?!-0$)-?(0|[1-9]\d*)(\.\d*[1-9])?$/);
      expect(Math.abs(Number(text) - figure)).toBeLessThanOrEqual(0.51e-8);
    }));
  });

  test.each([NaN, Infinity, -Infinity, 1e15])('%s is thrown', (figure) => {
    expect(() => plainNumber(figure, 3)).toThrow(String(figure));
  });
});

describe('a text', () => {
  test('holds no control character and no half of a pair, whatever comes', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => {
      expect(cleanText(text)).not.toMatch(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\ufffe\uffff]/u);
    }));
    expect(cleanText('a\r\nb\u0007c\ud83d')).toBe('a bc\ufffd');
    expect(cleanText('Räuber 🐄')).toBe('Räuber 🐄');
  });
});

test('base64 is that of RFC 4648: its own examples, and any bytes as Node writes them', () => {
  const ascii = (text: string): Uint8Array => new TextEncoder().encode(text);
  expect(['', 'f', 'fo', 'foo', 'foob', 'fooba', 'foobar'].map((text) => base64(ascii(text)))).toEqual(['', 'Zg==', 'Zm8=', 'Zm9v', 'Zm9vYg==', 'Zm9vYmE=', 'Zm9vYmFy']);
  fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => { expect(base64(bytes)).toBe(Buffer.from(bytes).toString('base64')); }));
});

test('the drawing font names itself', () => {
  expect(fontNames(font)).toEqual({ family: 'Noto Sans SemiCondensed', postScript: 'NotoSans-SemiCondensed' });
});
