/** Texts in lines. */
import { type Kit, measureText } from './kit.ts';

/** Letters of a word that would look lost on a line of its own. */
const LONE = 3;

/**
 * Breaks a text into lines no wider than `width` (paper inches), at spaces where it can and inside a word that is too long for a
 * line of its own. Never returns an empty list.
 */
export function wrapText(kit: Kit, text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  const flush = (): void => {
    if (line !== '') lines.push(line);
    line = '';
  };
  const words = text.split(' ').filter((part) => part !== '');
  for (const word of words) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (measureText(kit, longer) <= width) {
      line = longer;
      continue;
    }
    flush();
    for (const char of word) {
      if (line !== '' && measureText(kit, line + char) > width) flush();
      line += char;
    }
  }
  flush();
  return lines.length === 0 ? [''] : companied(kit, lines, words, width);
}

/** A last line of one short word, such as a revision's letter, gets the word before it for company where both have room. */
function companied(kit: Kit, lines: readonly string[], words: readonly string[], width: number): string[] {
  const last = lines.at(-1) ?? '';
  const before = lines.at(-2) ?? '';
  const space = before.lastIndexOf(' ');
  const company = before.slice(space + 1);
  const both = `${company} ${last}`;
  // Of a word that had to be broken the parts stay as they are.
  const whole = words.at(-1) === last && words.at(-2) === company;
  if (space < 0 || !whole || last.length > LONE || measureText(kit, both) > width) return [...lines];
  return [...lines.slice(0, -2), before.slice(0, space), both];
}
