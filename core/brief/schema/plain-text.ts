export type PlainText = { readonly text: string } | { readonly control: string };

const isControl = (code: number): boolean => code < 0x20 || (code >= 0x7f && code <= 0x9f);
/** Half of a pair that stands alone: not a character, and nothing that can be written as UTF-8. */
const isHalf = (code: number): boolean => code >= 0xd800 && code <= 0xdfff;

/** A person's text on one line, each line break folded to a space; or the first character that cannot be printed, as `U+0007`. */
export function plainText(value: string): PlainText {
  const text = value.replace(/\r\n|[\r\n\u2028\u2029]/g, ' ');
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    if (isControl(code) || isHalf(code)) return { control: `U+${code.toString(16).toUpperCase().padStart(4, '0')}` };
  }
  return { text };
}
