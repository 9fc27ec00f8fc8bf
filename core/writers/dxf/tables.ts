/** TABLES section: view of the model, linetypes, layers, text styles, dimension styles, block records. */
import { DASHES, LAYERS } from '../../drafting/primitives.ts';
import { type DimStyle } from './dim-styles.ts';
import { dimStyleRecord } from './dim-style-record.ts';
import { type Drawing } from './drawing.ts';
import { TABLES, type TableName } from './handles.ts';
import { INK, LAYER_LOOK, LINETYPE, lineweight } from './styles.ts';
import { styleRecords } from './style-records.ts';
import { type TableRecord, openRecord } from './record.ts';
import { viewportRecord } from './viewport.ts';

export function tablesSection(drawing: Drawing): void {
  const { tags } = drawing;
  tags.put(0, 'SECTION');
  tags.put(2, 'TABLES');
  for (const name of TABLES) table(drawing, name, recordsOf(drawing, name));
  tags.put(0, 'ENDSEC');
}

function table({ tags, fixed }: Drawing, name: TableName, records: readonly TableRecord[]): void {
  tags.put(0, 'TABLE');
  tags.put(2, name);
  tags.put(5, fixed.table[name]);
  tags.put(330, '0');
  tags.put(100, 'AcDbSymbolTable');
  tags.put(70, records.length);
  if (name === 'DIMSTYLE') tags.put(100, 'AcDbDimStyleTable');
  for (const record of records) record();
  tags.put(0, 'ENDTAB');
}

function recordsOf(drawing: Drawing, table: TableName): readonly TableRecord[] {
  switch (table) {
    case 'VPORT':
      return [() => { viewportRecord(drawing); }];
    case 'LTYPE':
      return linetypeRecords(drawing);
    case 'LAYER':
      return layerRecords(drawing);
    case 'STYLE':
      return styleRecords(drawing);
    case 'VIEW':
    case 'UCS':
      return [];
    case 'APPID':
      return [() => {
        openRecord(drawing, 'APPID', 'AcDbRegAppTableRecord', 'ACAD');
        drawing.tags.put(70, 0);
      }];
    case 'DIMSTYLE':
      return [STANDARD, ...drawing.dimStyles.all].map((style) => () => { dimStyleRecord(drawing, style); });
    case 'BLOCK_RECORD':
      return blockRecords(drawing);
  }
}

/** Every drawing has one of this name. */
const STANDARD: DimStyle = { name: 'STANDARD', factor: 1 };

/** Patterns are given on paper and written in drawing units, so that they look alike at every scale. */
function linetypeRecords(drawing: Drawing): TableRecord[] {
  const { tags, units } = drawing;
  const plain = (name: string): TableRecord => () => {
    openRecord(drawing, 'LTYPE', 'AcDbLinetypeTableRecord', name);
    linetype('', []);
  };
  const linetype = (picture: string, pattern: readonly number[]): void => {
    tags.put(70, 0);
    tags.put(3, picture);
    tags.put(72, 65);
    tags.put(73, pattern.length);
    tags.real(40, pattern.reduce((sum, dash) => sum + units.length(dash), 0));
    pattern.forEach((dash, k) => {
      tags.real(49, units.length(k % 2 === 0 ? dash : -dash));
      tags.put(74, 0);
    });
  };
  return [
    plain('ByBlock'),
    plain('ByLayer'),
    plain(LINETYPE.solid),
    () => {
      openRecord(drawing, 'LTYPE', 'AcDbLinetypeTableRecord', LINETYPE.hidden);
      linetype('__ __ __ __', DASHES.hidden);
    },
    () => {
      openRecord(drawing, 'LTYPE', 'AcDbLinetypeTableRecord', LINETYPE.center);
      linetype('____ _ ____ _', DASHES.center);
    },
  ];
}

function layerRecords(drawing: Drawing): TableRecord[] {
  const { tags, fixed } = drawing;
  const layer = (name: string, linetype: string, weight: number): TableRecord => () => {
    openRecord(drawing, 'LAYER', 'AcDbLayerTableRecord', name);
    tags.put(70, 0);
    tags.put(62, INK);
    tags.put(6, linetype);
    tags.put(370, weight);
    tags.put(390, fixed.plotStyle);
  };
  const ours = LAYERS.map((name) => {
    const look = LAYER_LOOK[name];
    return layer(name, LINETYPE[look.dash], lineweight(look.weight));
  });
  return [layer('0', LINETYPE.solid, lineweight('thin')), ...ours];
}

function blockRecords(drawing: Drawing): TableRecord[] {
  const { fixed } = drawing;
  const record = (name: string, handle: string, layout: string): TableRecord => () => {
    openRecord(drawing, 'BLOCK_RECORD', 'AcDbBlockTableRecord', name, handle);
    drawing.tags.put(340, layout);
  };
  return [
    record('*Model_Space', fixed.modelRecord, fixed.modelLayout),
    record('*Paper_Space', fixed.paperRecord, fixed.paperLayout),
    ...drawing.pictures.map((picture) => record(picture.block, picture.record, '0')),
  ];
}
