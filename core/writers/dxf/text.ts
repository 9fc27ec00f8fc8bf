/** Texts as a DXF holds them: ASCII, with the format's own codes for the rest (DXF reference, control codes and special text). */
import { cleanText } from '../clean-text.ts';

const DIAMETER = '%%c';
const DEGREE = '%%d';

/**
 * A text for a TEXT entity. Ø and ⌀ become `%%c` and ° becomes `%%d`; what a person wrote stays what a viewer shows:
 * - a percent sign before another one is written by its number, `%%037`. (`%%%` means the same, but readers that do not know it
 *   would find `%%d` in `%%%d`, and show a degree sign that nobody wrote.)
 * - `^` is written `^ `, so that it starts no control character;
 * - the backslash of `\U+` and `\M+` is written by its number, `\U+005C`;
 * - what is not ASCII is written by its number, beyond U+FFFF in brackets, since the format has four digits only.
 */
export function dxfText(text: string): string {
  return cleanText(text)
    .replace(/%(?=[%Ø⌀°])/g, '%%037')
    .replace(/\^/g, '^ ')
    .replace(/\\(?=[UuMm]\+)/g, numbered('\\'))
    .replace(/[Ø⌀]/g, DIAMETER)
    .replace(/°/g, DEGREE)
    .replace(/[^\x20-\x7e]/gu, numbered);
}

/** The text of a DIMENSION, in which braces and backslashes form paragraphs (as in MTEXT) and so are escaped. */
export const dxfDimensionText = (text: string): string =>
  dxfText(text.replace(/[\\{}]/g, (char) => `\\${char}`));

function numbered(char: string): string {
  const code = char.codePointAt(0) ?? 0;
  const digits = code.toString(16).toUpperCase().padStart(4, '0');
  return code > 0xffff ? `(U+${digits})` : `\\U+${digits}`;
}
