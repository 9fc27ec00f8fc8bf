/** Words that a torch or a scribe draws: polylines, no outlines. */
import { type Vec } from '../../base/points.ts';
import { CAPITAL, GLYPHS } from './glyphs.ts';

export type Polyline = readonly Vec[];

/** Width of a text whose capitals are `height` high, blanks at both ends of it included. */
export const strokeWidth = (text: string, height: number): number => [...text].reduce((sum, char) => sum + glyphOf(char).advance, 0) * (height / CAPITAL);

/** The strokes of a text from `at`, the left end of its baseline, in inches. Throws on a letter that no piece mark has. */
export function strokeText(text: string, at: Vec, height: number): readonly Polyline[] {
  const scale = height / CAPITAL;
  let left = at.x;
  return [...text].flatMap((char) => {
    const { advance, strokes } = glyphOf(char);
    const from = left;
    left += advance * scale;
    return strokes.map((figures) => Array.from({ length: figures.length / 2 }, (_, i) => ({ x: from + figures[2 * i]! * scale, y: at.y + figures[2 * i + 1]! * scale })));
  });
}

function glyphOf(char: string): (typeof GLYPHS)[string] {
  const glyph = GLYPHS[char];
  if (glyph === undefined) throw new Error(`no stroke letter for ${JSON.stringify(char)}`);
  return glyph;
}
