/** CLASSES section: the objects below that AC1015 counts as classes of their own, with the names that the reference gives them. */
import { type Tags } from './tags.ts';

const CLASSES = [
  ['ACDBDICTIONARYWDFLT', 'AcDbDictionaryWithDefault'],
  ['ACDBPLACEHOLDER', 'AcDbPlaceHolder'],
  ['LAYOUT', 'AcDbLayout'],
] as const;

export function classesSection(tags: Tags): void {
  tags.put(0, 'SECTION');
  tags.put(2, 'CLASSES');
  for (const [record, name] of CLASSES) {
    tags.put(0, 'CLASS');
    tags.put(1, record);
    tags.put(2, name);
    tags.put(3, 'ObjectDBX Classes');
    tags.put(90, 0);
    tags.put(280, 0);
    tags.put(281, 0);
  }
  tags.put(0, 'ENDSEC');
}
