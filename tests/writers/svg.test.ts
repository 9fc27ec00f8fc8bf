/** The SVG as text. What a browser makes of it is held in svg-browser.test.ts. */
import { describe, expect, test } from 'vitest';
import { emSize } from '../../core/drafting/font.ts';
import { type Primitive } from '../../core/drafting/primitives.ts';
import { writeSvg } from '../../core/writers/index.ts';
import { arc, circle, coverSheet, dot, fill, font, inchSheet, line, metricSheet, pen, sheets, text } from './fixtures.ts';

const drawn = (...primitives: Primitive[]): string => /<g id="drawing"[^>]*>([^]*)<\/g>\n<\/svg>/.exec(writeSvg({ ...inchSheet, primitives }, font))?.[1] ?? '';

describe('an SVG of ours', () => {
  test('is the same file each time', () => {
    expect(writeSvg(inchSheet, font)).toBe(writeSvg(inchSheet, font));
  });

  test('is as large as its paper, drawn in paper inches', () => {
    expect(writeSvg(inchSheet, font)).toContain('width="17in" height="11in" viewBox="0 0 17 11"');
    expect(writeSvg(metricSheet, font)).toContain('width="420mm" height="297mm" viewBox="0 0 16.535433 11.692913"');
  });

  test('turns y down in the figures', () => {
    expect(drawn(line(1, 2, 3.5, 4))).toContain('<line x1="1" y1="9" x2="3.5" y2="7"/>');
    expect(drawn(circle(1, 2, 0.5))).toContain('<circle cx="1" cy="9" r="0.5"/>');
    expect(drawn(fill('SIZES', [1, 1], [2, 1], [2, 1.5]))).toContain('<polygon points="1 10 2 10 2 9.5"/>');
  });

  test('has the weights 0.6 and 0.3 mm and the dashes of the contract', () => {
    expect(drawn(line(1, 1, 2, 2, pen('STEEL', 'thick')))).toContain('<g class="steel">\n<g stroke-width="0.023622">');
    expect(drawn(line(1, 1, 2, 2, pen('HIDDEN', 'thin', 'hidden')))).toContain('<g class="hidden">\n<g stroke-width="0.011811" stroke-dasharray="0.12 0.06">');
    expect(drawn(line(1, 1, 2, 2, pen('CENTER', 'thin', 'center')))).toContain('stroke-dasharray="0.5 0.06 0.1 0.06"');
  });

  test('keeps arcs as arcs: counter-clockwise on paper against the clock of the file, past a half turn in two, a whole turn as a circle', () => {
    expect(drawn(arc(5, 5, 1, 0, Math.PI / 2))).toContain('<path d="M6 6 A1 1 0 0 0 5 5"/>');
    expect(drawn(arc(5, 5, 1, Math.PI / 2, -Math.PI / 2))).toContain('<path d="M5 5 A1 1 0 0 1 6 6"/>');
    expect(drawn(arc(5, 5, 1, 0, 1.5 * Math.PI))).toContain('<path d="M6 6 A1 1 0 0 0 4.292893 5.292893 A1 1 0 0 0 5 7"/>');
    expect(drawn(arc(5, 5, 1, 0.7, -2 * Math.PI))).toContain('<circle cx="5" cy="6" r="1"/>');
  });

  test('places a text at the start of its baseline, as wide as measured, turned about that point', () => {
    const size = String(Number(emSize(font, 0.1).toFixed(6)));
    expect(drawn(text('ab', 3, 4))).toMatch(new RegExp(`<text x="3" y="7" font-size="${size}" textLength="[0-9.]+" lengthAdjust="spacingAndGlyphs">ab</text>`));
    expect(drawn(text('ab', 3, 4, 'start', Math.PI / 2))).toContain('transform="rotate(-90 3 7)"');
    const word = text('ab', 3, 4, 'end');
    expect(drawn(word)).toContain(`x="${String(Number((3 - (word.kind === 'text' ? word.width : NaN)).toFixed(6)))}"`);
  });

  test('escapes what a person typed and holds no control character', () => {
    expect(drawn(text('<b>&amp; "q"', 1, 1))).toContain('>&lt;b&gt;&amp;amp; &quot;q&quot;</text>');
    expect(writeSvg(coverSheet, font)).toContain('<title id="title">100 plan &amp; &lt;odd&gt; &quot;sheet&quot;</title>');
    for (const sheet of sheets) expect(writeSvg(sheet, font).replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\ufffe\uffff]/u);
  });

  test('describes itself by its views', () => {
    expect(writeSvg(inchSheet, font)).toContain('<desc id="desc">View plan 1:24; View detail 1:4</desc>');
  });

  test('holds the whole font once, and asks for no kerning and no ligatures', () => {
    const file = writeSvg(inchSheet, font);
    const [, data = ''] = /base64,([^"]*)"/.exec(file) ?? [];
    expect(Buffer.from(data, 'base64').equals(font.bytes)).toBe(true);
    expect(file.split('@font-face')).toHaveLength(2);
    expect(file).toContain('font-kerning:none;font-variant-ligatures:none');
  });

  test('has no exponent, no minus zero and no figure that is none', () => {
    const file = drawn(line(-0.0000001, 11.0000001, 1e-9, 5), dot(2, 2, 0.03));
    expect(file).toContain('<line x1="0" y1="0" x2="0" y2="6"/>');
    expect(() => drawn(line(NaN, 1, 2, 2))).toThrow('NaN');
  });
});
