import { tidyFigures } from '../units/index.ts';

/** One form for the name of a section or sheet, so that `Pipe 2  SCH. 40` and `pipe 2 sch 40` are one key. */
export function tidyName(text: string): string {
  return tidyFigures(text)
    .toLowerCase()
    .replace(/(\d|\s)[x×](?=\s|[\d.])/g, '$1 x ')
    .replace(/\bsch(edule|\.)? ?(?=\d)/g, 'sch ')
    .replace(/(\d) ?(ga|gauge)\.?$/, '$1 ga')
    .replace(/(\d) ?mm$/, '$1 mm')
    .replace(/(^|\s)\.(\d)/g, '$10.$2')
    .replace(/\s+/g, ' ')
    .trim();
}
