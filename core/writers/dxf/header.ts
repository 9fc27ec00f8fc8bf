/** HEADER section: version, units, extents, and the styles in force. */
import { type Sheet } from '../../drafting/primitives.ts';
import { type Vec } from '../../base/points.ts';
import { TEXT_STYLE } from './styles.ts';
import { type Tags, startTags } from './tags.ts';
import { type Units } from './units.ts';

/** $INSUNITS of the reference. */
const INCHES = 1;
const MILLIMETERS = 4;

/** The header's lines. It stands first but is written last, when `seed`, the first free handle, is known. */
export function headerSection(sheet: Sheet, units: Units, dimStyle: string, seed: string): readonly string[] {
  const tags = startTags();
  const corner = units.point({ x: sheet.paper.width, y: sheet.paper.height });
  tags.put(0, 'SECTION');
  tags.put(2, 'HEADER');
  text(tags, 'ACADVER', 1, 'AC1015');
  text(tags, 'DWGCODEPAGE', 3, 'ANSI_1252');
  point(tags, 'INSBASE', { x: 0, y: 0 });
  point(tags, 'EXTMIN', { x: 0, y: 0 });
  point(tags, 'EXTMAX', corner);
  for (const [name, at] of [['LIMMIN', { x: 0, y: 0 }], ['LIMMAX', corner]] as const) {
    tags.put(9, `$${name}`);
    tags.point2(10, at);
  }
  real(tags, 'LTSCALE', 1);
  text(tags, 'TEXTSTYLE', 7, TEXT_STYLE);
  real(tags, 'TEXTSIZE', units.length(sheet.paper.text));
  text(tags, 'CLAYER', 8, '0');
  text(tags, 'CELTYPE', 6, 'ByLayer');
  text(tags, 'CECOLOR', 62, 256);
  text(tags, 'CELWEIGHT', 370, -1);
  text(tags, 'DIMSTYLE', 2, dimStyle);
  text(tags, 'LUNITS', 70, units.metric ? 2 : 4);
  text(tags, 'LUPREC', 70, units.metric ? 1 : 4);
  text(tags, 'AUNITS', 70, 0);
  text(tags, 'MEASUREMENT', 70, units.metric ? 1 : 0);
  text(tags, 'INSUNITS', 70, units.metric ? MILLIMETERS : INCHES);
  text(tags, 'LWDISPLAY', 290, 1);
  text(tags, 'PSTYLEMODE', 290, 1);
  text(tags, 'TILEMODE', 70, 1);
  text(tags, 'HANDSEED', 5, seed);
  tags.put(0, 'ENDSEC');
  return tags.lines;
}

function text(tags: Tags, name: string, code: number, value: string | number): void {
  tags.put(9, `$${name}`);
  tags.put(code, value);
}

function real(tags: Tags, name: string, value: number): void {
  tags.put(9, `$${name}`);
  tags.real(40, value);
}

function point(tags: Tags, name: string, at: Vec): void {
  tags.put(9, `$${name}`);
  tags.point(10, at);
}
