/** Templates on paper: at full size, on as many pages as it takes, with nothing in the way of their words. */
import fc from 'fast-check';
import { join } from 'node:path';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { degrees, inches } from '../../../core/base/quantity.ts';
import { strokesOf, type Sheet, type Stroke } from '../../../core/drafting/primitives.ts';
import { templateSheets } from '../../../core/drawings/templates/index.ts';
import { sampleWrap, wrapOf, type Cope, type Template } from '../../../core/shop/templates/index.ts';
import { writePdf } from '../../../core/writers/index.ts';
import { makePdf } from '../../../electron/pdf/index.ts';
import { makeBrief } from '../../support/brief-builder.ts';
import { outside, run } from '../../support/outside.ts';
import { sheetBreaches } from '../../support/sheet-breaches.ts';
import { inFolder } from '../../support/temporary.ts';
import { font } from '../../writers/fixtures.ts';
import { aCope } from './any-cope.ts';

const brief = makeBrief();
const templateOf = (cope: Cope): Template => ({
  name: 'R2', cope, sections: ['pipe 2 sch 40'],
  uses: [{ mark: 'R2', quantity: 12, ends: 2, other: null, turn: 180 }, { mark: 'R10', quantity: 3, ends: 1, other: 'R10', turn: 0 }],
});
const two: Cope = { kind: 'saddle', branch: inches(2.375 / 2), header: inches(2.875 / 2), slope: degrees(20), bend: null };

const lengthsOn = (sheets: readonly Sheet[], layer: string): readonly Extract<Stroke, { kind: 'line' }>[] =>
  sheets.flatMap((sheet) => strokesOf(sheet.primitives)).filter((stroke) => stroke.kind === 'line').filter((stroke) => stroke.pen.layer === layer);

describe('a template on paper', () => {
  it('has its words clear of all lines, its bar on every page, and its whole outline, for any cope on any paper', () => {
    fc.assert(fc.property(aCope, fc.constantFrom('ANSI B', 'ISO A3'), fc.constantFrom('in' as const, 'mm' as const), (cope, paper, units) => {
      const sheets = templateSheets(font, { ...brief, paper, units }, templateOf(cope));
      expect(sheets.flatMap((sheet) => sheetBreaches(sheet, font))).toEqual([]);
      for (const sheet of sheets) {
        const bars = lengthsOn([sheet], 'SIZES').map(({ a, b }) => Math.hypot(b.x - a.x, b.y - a.y));
        expect(bars.some((bar) => Math.abs(bar - 4) < 1e-9)).toBe(true);
        expect(bars.some((bar) => Math.abs(bar - 100 / 25.4) < 1e-9)).toBe(units === 'mm');
      }
      const wrap = wrapOf(cope);
      const texts = sheets.flatMap((sheet) => strokesOf(sheet.primitives)).filter((stroke) => stroke.kind === 'text').map(({ text }) => text);
      expect(texts.some((text) => text.startsWith('seam'))).toBe(true);
      // What two pages share is drawn on both: the outline is there as long as it is, or longer.
      const drawn = lengthsOn(sheets, 'STEEL').reduce((sum, { a, b }) => sum + Math.hypot(b.x - a.x, b.y - a.y), 0);
      const cut = sampleWrap(wrap);
      const whole = cut.slice(1).reduce((sum, b, i) => sum + Math.hypot(b.x - cut[i]!.x, b.y - cut[i]!.y), wrap.around + 2 * wrap.cutAt(0));
      expect(drawn).toBeGreaterThan(whole - 1e-6);
      if (!texts.some((text) => text.startsWith('match '))) expect(drawn).toBeLessThan(whole + 1e-6);
    }), { seed: 20260302, numRuns: 60 });
  });

  it('has a letter for each match line, on the two pages that it joins', () => {
    const sheets = templateSheets(font, brief, templateOf({ ...two, branch: inches(3.3125), header: inches(4) }));
    const matches = sheets.map((sheet) => strokesOf(sheet.primitives).filter((stroke) => stroke.kind === 'text').map(({ text }) => text).filter((text) => text.startsWith('match ')));
    expect(matches.filter((words) => words.length > 0)).toEqual([['match A'], ['match A', 'match B'], ['match B']]);
  });

  it('tells the top line, the seam, and how the two ends are turned', () => {
    const texts = strokesOf(templateSheets(font, brief, templateOf(two))[0]!.primitives).filter((stroke) => stroke.kind === 'text').map(({ text }) => text);
    expect(texts).toContain('top line at lower post');
    expect(texts).toContain('seam; on top at upper post');
    expect(texts.join(' ')).toMatch(/Both ends of R2 \(12\): the seams of the two ends half a turn apart\./);
    expect(texts.join(' ')).toMatch(/their axes at 70°/);
  });
});

describe.skipIf(!outside('poppler'))('a template as poppler prints it at 300 dpi', () => {
  it('has a bar of 4 in and a circumference of pi times the diameter, each within a pixel', async () => {
    const bytes = await writePdf(templateSheets(font, brief, templateOf(two)), font, { title: 'R2', subject: '', author: '', creator: 'Penwright', date: null }, makePdf);
    await inFolder({ 'r2.pdf': bytes }, (folder) => {
      run('pdftoppm', ['-r', '300', '-gray', '-singlefile', join(folder, 'r2.pdf'), join(folder, 'r2')]);
      const file = readFileSync(join(folder, 'r2.pgm'));
      const [head = '', width = '', height = ''] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(file.toString('latin1', 0, 40)) ?? [];
      const [across, down] = [Number(width), Number(height)];
      expect([across, down]).toEqual([11 * 300, 8.5 * 300]);
      const longest = Array.from({ length: down }, (_, y) => {
        let [best, now] = [0, 0];
        for (let x = 0; x < across; x++) {
          now = (file[head.length + y * across + x] ?? 255) < 128 ? now + 1 : 0;
          best = Math.max(best, now);
        }
        return best;
      });
      // Rows whose longest line is about as long as the bar, and those as long as the straight edge; each has its end's own line width.
      const near = (inch: number): number[] => longest.filter((row) => Math.abs(row - inch * 300) < 12);
      const thin = (0.3 / 25.4) * 300;
      expect(near(4).some((row) => Math.abs(row - 4 * 300 - thin) <= 1)).toBe(true);
      expect(near(Math.PI * 2.375).some((row) => Math.abs(row - Math.PI * 2.375 * 300 - thin) <= 1)).toBe(true);
    });
  });
});
