/** Texts in a DXF: ASCII, and what a person wrote is what a viewer shows. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dxfDimensionText, dxfText } from '../../core/writers/dxf/text.ts';
import { cleanText } from '../../core/writers/clean-text.ts';
import { shownText } from './dxf-text-reader.ts';

/** Pieces that a format may trip over, and any character beside them. */
const words = fc.array(
  fc.oneof(fc.constantFrom('%', '%%', '%%d', '%%C', '%%%', '%%065', '^', '^J', '^ ', '\\', '\\U+', '\\U+00D8', '\\M+1', '\\P', '{', '}', 'Ø', '°', '⌀', ' ', 'u', '0', '+'), fc.string({ unit: 'binary' })),
).map((parts) => parts.join(''));

describe('text of a DXF', () => {
  test('the two symbols of ours have the codes of the format', () => {
    expect(dxfText('Ø 2 3/8 at 22.5°')).toBe('%%c 2 3/8 at 22.5%%d');
    expect(dxfText('⌀ 4')).toBe('%%c 4');
  });

  test('a code that a person typed is no code', () => {
    expect(dxfText('90%%d')).toBe('90%%037%d');
    expect(dxfText('50%')).toBe('50%');
    expect(dxfText('50%°')).toBe('50%%037%%d');
    expect(dxfText('a^Jb')).toBe('a^ Jb');
    expect(dxfText('\\U+00D8 \\M+1A0D1 C:\\Users')).toBe('\\U+005CU+00D8 \\U+005CM+1A0D1 C:\\Users');
  });

  test('no reader that knows only %%c, %%d and %%p finds one of them in what a person typed', () => {
    fc.assert(fc.property(words, (text) => {
      const plain = text.replace(/[Ø⌀°]/g, '');
      expect(dxfText(plain)).not.toMatch(/%%[cdpoukCDPOUK]/);
    }));
  });

  test('characters beyond ASCII go by their number, those beyond four digits in brackets', () => {
    expect(dxfText('ä Ł 牛')).toBe('\\U+00E4 \\U+0141 \\U+725B');
    expect(dxfText('🐄')).toBe('(U+1F404)');
  });

  test('line breaks and tabs fold to a space, other control characters go', () => {
    expect(dxfText('a\r\n\tb\u0000c\u0007d\u009fe\u2028f')).toBe('a bcde f');
  });

  test('whatever is typed, the file holds printable ASCII and a viewer shows what was typed', () => {
    fc.assert(fc.property(words, (text) => {
      const raw = dxfText(text);
      expect(raw).toMatch(/^[\x20-\x7e]*$/);
      const typed = cleanText(text).replace(/⌀/g, 'Ø').replace(/[\u{10000}-\u{10ffff}]/gu, (char) => `(U+${(char.codePointAt(0) ?? 0).toString(16).toUpperCase()})`);
      expect(shownText(raw)).toBe(typed);
    }), { numRuns: 1000 });
  });

  test('the text of a dimension escapes what would form its paragraphs', () => {
    expect(dxfDimensionText('a\\P{b}')).toBe('a\\\\P\\{b\\}');
  });
});
