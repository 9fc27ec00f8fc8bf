/** The drawing font against fontkit, an independent reader of TrueType fonts (MIT), and the breaking of lines. */
import { Buffer } from 'node:buffer';
import * as fontkit from 'fontkit';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitTitle } from '../../core/drafting/frame.ts';
import { textWidth } from '../../core/drafting/font.ts';
import { measureText } from '../../core/drafting/kit.ts';
import { paperNamed } from '../../core/drafting/paper.ts';
import { wrapText } from '../../core/drafting/wrap.ts';
import { font, fontBytes, kitOf } from './sample.ts';

const other = fontkit.create(Buffer.from(fontBytes)) as fontkit.Font;
const kit = kitOf();

test('metrics and every advance are what fontkit reads', () => {
  expect(font.unitsPerEm).toBe(other.unitsPerEm);
  expect(font.capHeight).toBe(other.capHeight);
  // fontkit's ascent and descent are those of the hhea table.
  expect([font.ascent, font.descent]).toEqual([other.ascent, other.descent]);
  expect(other.characterSet.length).toBeGreaterThan(90);
  for (const code of other.characterSet) {
    // 0xFFFF ends a cmap of format 4 and is no character.
    if (code >= 0xffff) continue;
    expect(font.has(code), String(code)).toBe(true);
    expect(font.advance(code), String(code)).toBe(other.glyphForCodePoint(code).advanceWidth);
  }
  expect(font.advance(0x1f404)).toBe(other.getGlyph(0).advanceWidth);
});

test('the font has what a drawing prints', () => {
  for (const char of ' !"#%&\'()*+,-./0123456789:;=@ABCXYZabcxyz°Ø±×…–éñü') expect(font.has(char.codePointAt(0)!), char).toBe(true);
});

test('a width is the sum of the advances at its cap height, without kerning', () => {
  for (const text of ["12'-3 5/8\" (147.625)", 'AVATAR To We', 'Ø 2 3/8"', 'fi ffl']) {
    const run = other.layout(text, { kern: false, liga: false, clig: false, dlig: false, rlig: false, calt: false, ccmp: false } as never);
    expect(textWidth(font, text, 0.16)).toBeCloseTo((run.advanceWidth * 0.16) / other.capHeight, 9);
  }
});

test('lines are no wider than they may be and lose nothing', () => {
  const words = fc.array(fc.string({ unit: fc.constantFrom(...'abcMW/-1.'), minLength: 1, maxLength: 14 }), { maxLength: 20 });
  fc.assert(
    fc.property(words, fc.double({ min: 0.5, max: 4, noNaN: true }), (list, width) => {
      const lines = wrapText(kit, list.join(' '), width);
      for (const line of lines) expect(measureText(kit, line)).toBeLessThanOrEqual(width + 1e-9);
      expect(lines.join('').replaceAll(' ', '')).toBe(list.join(''));
      // No line could have taken the next line's first word too; only the last may hold one back, that a short word does not stand alone.
      lines.slice(1).forEach((line, i) => {
        if (i === lines.length - 2 && /^\S+ \S{1,3}$/.test(line)) return;
        const first = line.split(' ')[0]!;
        const broken = measureText(kit, first) > width || !list.includes(first);
        if (!broken) expect(measureText(kit, `${lines[i]!} ${first}`)).toBeGreaterThan(width);
      });
    }),
    { seed: 31, numRuns: 400 },
  );
  expect(wrapText(kit, '', 1)).toEqual(['']);
  expect(wrapText(kit, 'one two', 9)).toEqual(['one two']);
  expect(wrapText(kit, 'one two rev A', measureText(kit, 'one two rev'))).toEqual(['one two', 'rev A']);
});

test('a long title is cut to the title block', () => {
  const paper = paperNamed('ANSI B');
  expect(fitTitle(kit, paper, 'Plan')).toBe('Plan');
  const cut = fitTitle(kit, paper, 'Panels of the curved alley rolled out flat '.repeat(9));
  expect(cut.endsWith('…')).toBe(true);
  expect(cut.length).toBeGreaterThan(30);
});
