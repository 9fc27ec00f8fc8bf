/** Text styles: the drawing font by its family and its usual file name, and the STANDARD one that every drawing has. */
import { type Drawing } from './drawing.ts';
import { fontNames } from './font-names.ts';
import { type TableRecord, openRecord } from './record.ts';
import { TEXT_STYLE } from './styles.ts';
import { dxfText } from './text.ts';

/** Group 1071 of a TrueType style: variable pitch, sans serif. */
const PITCH_AND_FAMILY = 0x22;

export function styleRecords(drawing: Drawing): TableRecord[] {
  const { tags, font, fixed, handles } = drawing;
  const names = fontNames(font);
  const style = (name: string, handle: string): TableRecord => () => {
    openRecord(drawing, 'STYLE', 'AcDbTextStyleTableRecord', name, handle);
    tags.put(70, 0);
    tags.real(40, 0);
    tags.real(41, 1);
    tags.real(50, 0);
    tags.put(71, 0);
    tags.real(42, drawing.units.length(drawing.sheet.paper.text));
    tags.put(3, `${dxfText(names.postScript)}.ttf`);
    tags.put(4, '');
    tags.put(1001, 'ACAD');
    tags.put(1000, dxfText(names.family));
    tags.put(1071, PITCH_AND_FAMILY);
  };
  return [style('STANDARD', handles.next()), style(TEXT_STYLE, fixed.textStyle)];
}
