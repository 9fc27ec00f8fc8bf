/**
 * Breaks a text into lines no wider than `width` (paper inches), at spaces where it can and inside a word that is too long for a
 * line of its own. Never returns an empty list.
 */
import { type Kit, measureText } from './kit.ts';

export function wrapText(kit: Kit, text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  const flush = (): void => {
    if (line !== '') lines.push(line);
    line = '';
  };
  for (const word of text.split(' ').filter((part) => part !== '')) {
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
  return lines.length === 0 ? [''] : lines;
}
