import { MM_PER_INCH } from '../base/quantity.ts';
import { say } from '../text/index.ts';
import { type Range } from './ranges.ts';

const toMm = (length: number): number => Number((length * MM_PER_INCH).toFixed(3));

/** A range in words, both ends in its unit: `72 in to 240 in (1828.8 mm to 6096 mm)`. */
export function allowedRange({ least, greatest, unit }: Range): string {
  switch (unit) {
    case 'in':
      return say('allowed.in', { least, greatest, leastMm: toMm(least), greatestMm: toMm(greatest) });
    case 'deg':
      return say('allowed.deg', { least, greatest });
    case 'lb':
      return say('allowed.lb', { least, greatest });
    case 'none':
      return least === greatest ? say('allowed.exactly', { least }) : say('allowed.plain', { least, greatest });
  }
}

/** A choice in words: `left, right`. */
export const allowedChoice = (choices: readonly string[]): string => choices.join(', ');
