/** Metrics of the drawing font, read from its own TrueType tables. No kerning, no ligatures: a text is the sum of its advances. */
import { type Inches, inches } from '../base/quantity.ts';

export interface Font {
  /** The file itself, for embedding. */
  readonly bytes: Uint8Array;
  readonly unitsPerEm: number;
  readonly capHeight: number;
  readonly ascent: number;
  readonly descent: number;
  /** Advance in font units; the missing glyph's where the font has none. */
  advance(codePoint: number): number;
  has(codePoint: number): boolean;
}

/** Width of a text whose capitals are `height` high, inches. */
export function textWidth(font: Font, text: string, height: number): Inches {
  let units = 0;
  for (const char of text) units += font.advance(char.codePointAt(0) ?? 0);
  return inches((units * height) / font.capHeight);
}

/** What of a font its letters' size follows from. */
export type FontSize = Pick<Font, 'unitsPerEm' | 'capHeight'>;

/** Font size (em) at which capitals are `height` high. */
export const emSize = (font: FontSize, height: number): number => (height * font.unitsPerEm) / font.capHeight;

/**
 * Reads a TrueType font (tables head, hhea, hmtx, cmap format 4 or 12, OS/2).
 * Throws where a table is missing: the font comes with the program.
 */
export function readFont(bytes: Uint8Array): Font {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tables = new Map<string, number>();
  for (let i = 0; i < view.getUint16(4); i += 1) {
    const at = 12 + 16 * i;
    const tag = String.fromCharCode(view.getUint8(at), view.getUint8(at + 1), view.getUint8(at + 2), view.getUint8(at + 3));
    tables.set(tag, view.getUint32(at + 8));
  }
  const table = (tag: string): number => {
    const at = tables.get(tag);
    if (at === undefined) throw new Error(`font has no ${tag} table`);
    return at;
  };
  const hhea = table('hhea');
  const hmtx = table('hmtx');
  const os2 = table('OS/2');
  const metrics = view.getUint16(hhea + 34);
  const glyphs = readCmap(view, table('cmap'));
  const advances = new Map<number, number>();
  const glyphAdvance = (glyph: number): number => view.getUint16(hmtx + 4 * Math.min(glyph, metrics - 1));
  for (const [code, glyph] of glyphs) advances.set(code, glyphAdvance(glyph));
  const missing = glyphAdvance(0);
  return {
    bytes,
    unitsPerEm: view.getUint16(table('head') + 18),
    capHeight: view.getInt16(os2 + 88),
    ascent: view.getInt16(hhea + 4),
    descent: view.getInt16(hhea + 6),
    advance: (code) => advances.get(code) ?? missing,
    has: (code) => advances.has(code),
  };
}

function readCmap(view: DataView, cmap: number): Map<number, number> {
  for (let i = 0; i < view.getUint16(cmap + 2); i += 1) {
    const at = cmap + view.getUint32(cmap + 4 + 8 * i + 4);
    const format = view.getUint16(at);
    if (format === 4) return readFormat4(view, at);
  }
  throw new Error('font has no cmap of format 4');
}

function readFormat4(view: DataView, at: number): Map<number, number> {
  const out = new Map<number, number>();
  const doubled = view.getUint16(at + 6);
  for (let s = 0; s < doubled; s += 2) {
    const end = view.getUint16(at + 14 + s);
    const start = view.getUint16(at + 16 + doubled + s);
    const delta = view.getUint16(at + 16 + 2 * doubled + s);
    const offsetAt = at + 16 + 3 * doubled + s;
    const offset = view.getUint16(offsetAt);
    for (let code = start; code <= end && code !== 0xffff; code += 1) {
      const raw = offset === 0 ? code : view.getUint16(offsetAt + offset + 2 * (code - start));
      const glyph = raw === 0 ? 0 : (raw + delta) & 0xffff;
      if (glyph !== 0) out.set(code, glyph);
    }
  }
  return out;
}
