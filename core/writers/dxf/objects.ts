/** OBJECTS section: the root dictionary and what a reader looks for in it. */
import { type Drawing } from './drawing.ts';
import { layoutObject } from './layout-object.ts';

export function objectsSection(drawing: Drawing): void {
  const { tags, handles, fixed } = drawing;
  const root = handles.next();
  const group = handles.next();
  const layouts = handles.next();
  const lineStyles = handles.next();
  const plotSettings = handles.next();
  const plotStyles = handles.next();
  const lineStyle = handles.next();
  tags.put(0, 'SECTION');
  tags.put(2, 'OBJECTS');
  dictionary(drawing, root, '0', [
    ['ACAD_GROUP', group],
    ['ACAD_LAYOUT', layouts],
    ['ACAD_MLINESTYLE', lineStyles],
    ['ACAD_PLOTSETTINGS', plotSettings],
    ['ACAD_PLOTSTYLENAME', plotStyles],
  ]);
  dictionary(drawing, group, root, []);
  dictionary(drawing, layouts, root, [['Model', fixed.modelLayout], ['Paper', fixed.paperLayout]]);
  dictionary(drawing, lineStyles, root, [['STANDARD', lineStyle]]);
  dictionary(drawing, plotSettings, root, []);
  plotStyleDictionary(drawing, plotStyles, root);
  layoutObject(drawing, { handle: fixed.modelLayout, owner: layouts, record: fixed.modelRecord, name: 'Model', order: 0 });
  layoutObject(drawing, { handle: fixed.paperLayout, owner: layouts, record: fixed.paperRecord, name: 'Paper', order: 1 });
  lineStyleObject(drawing, lineStyle, lineStyles);
  tags.put(0, 'ENDSEC');
}

type Entries = readonly (readonly [name: string, handle: string])[];

function dictionary({ tags }: Drawing, handle: string, owner: string, entries: Entries, type = 'DICTIONARY'): void {
  tags.put(0, type);
  tags.put(5, handle);
  tags.put(330, owner);
  tags.put(100, 'AcDbDictionary');
  tags.put(281, 1);
  for (const [name, entry] of entries) {
    tags.put(3, name);
    tags.put(350, entry);
  }
}

/** Plot styles by name: the one called Normal is every layer's. */
function plotStyleDictionary(drawing: Drawing, handle: string, root: string): void {
  const { tags, fixed } = drawing;
  dictionary(drawing, handle, root, [['Normal', fixed.plotStyle]], 'ACDBDICTIONARYWDFLT');
  tags.put(100, 'AcDbDictionaryWithDefault');
  tags.put(340, fixed.plotStyle);
  tags.put(0, 'ACDBPLACEHOLDER');
  tags.put(5, fixed.plotStyle);
  tags.put(330, handle);
}

/** The style of multilines that every drawing has; nothing here uses it. */
function lineStyleObject({ tags }: Drawing, handle: string, owner: string): void {
  tags.put(0, 'MLINESTYLE');
  tags.put(5, handle);
  tags.put(330, owner);
  tags.put(100, 'AcDbMlineStyle');
  tags.put(2, 'STANDARD');
  tags.put(70, 0);
  tags.put(3, '');
  tags.put(62, 256);
  tags.fine(51, 90);
  tags.fine(52, 90);
  tags.put(71, 2);
  for (const offset of [0.5, -0.5]) {
    tags.real(49, offset);
    tags.put(62, 256);
    tags.put(6, 'ByLayer');
  }
}
