/** The walker finds nothing wrong in what we write, and finds each thing that is broken on purpose. */
import { describe, expect, test } from 'vitest';
import { writeDxf } from '../../core/writers/index.ts';
import { dxfBreaches } from './dxf-structure.ts';
import { coverSheet, font, inchSheet, metricSheet, sheets } from './fixtures.ts';

const sound = writeDxf(inchSheet, font);

/** Puts `to` in place of the first `from`; throws where there is none, so that a case cannot pass by missing its mark. */
function swap(from: string | RegExp, to: string): string {
  const broken = sound.replace(from, to);
  if (broken === sound) throw new Error(`nothing to break: ${String(from)}`);
  return broken;
}

const BROKEN: readonly (readonly [what: string, text: string, said: RegExp])[] = [
  ['an odd number of lines', `${sound}0\n`, /odd number of lines/],
  ['a last line without its end', sound.slice(0, -1), /last line is not ended/],
  ['no EOF', swap(/0\nEOF\n$/, ''), /does not end with EOF/],
  ['a newline in a text', swap('\n1\nmiddle\n', '\n1\nmid\ndle\n'), /odd number of lines|group code is no number/],
  ['a character that is not ASCII', swap('\n1\nmiddle\n', '\n1\nmïddle\n'), /not printable ASCII/],
  ['a control character', swap('\n1\nmiddle\n', '\n1\nmid\u0007dle\n'), /not printable ASCII/],
  ['a text that is too long', swap('\n1\nmiddle\n', `\n1\n${'x'.repeat(2050)}\n`), /value of 2050 characters/],
  ['an exponent', swap('\n40\n2.4\n', '\n40\n2.4e0\n'), /is no real/],
  ['a minus zero', swap('\n40\n2.4\n', '\n40\n-0.0\n'), /is no real/],
  ['a figure that is none', swap('\n40\n2.4\n', '\n40\nNaN\n'), /is no real/],
  ['a fraction for an integer', swap('\n70\n160\n', '\n70\n160.5\n'), /is no integer/],
  ['a handle that is no hexadecimal', swap('\n5\nA1\n', '\n5\nG1\n'), /is no handle/],
  ['a group code of no kind', swap('\n40\n2.4\n', '\n440\n2.4\n'), /not in the reference/],
  ['sections in another order', swap(/(0\nSECTION\n2\nCLASSES\n[^]*?ENDSEC\n)(0\nSECTION\n2\nTABLES\n[^]*?ENDSEC\n)/, '$2$1'), /sections are/],
  ['a missing section', swap(/0\nSECTION\n2\nCLASSES\n[^]*?ENDSEC\n/, ''), /sections are/],
  ['a section twice', swap(/(0\nSECTION\n2\nCLASSES\n[^]*?ENDSEC\n)/, '$1$1'), /second section CLASSES/],
  ['an entity outside any section', swap('0\nSECTION\n2\nOBJECTS\n', '0\nPOINT\n0\nSECTION\n2\nOBJECTS\n'), /outside a section/],
  ['a table that is not ended', swap('0\nENDTAB\n', ''), /TABLE inside/],
  ['another version', swap('AC1015', 'AC1009'), /version AC1009/],
  ['the version not first', swap('9\n$ACADVER\n1\nAC1015\n9\n$DWGCODEPAGE\n3\nANSI_1252\n', '9\n$DWGCODEPAGE\n3\nANSI_1252\n9\n$ACADVER\n1\nAC1015\n'), /begins with/],
  ['a header variable missing', swap('9\n$EXTMAX\n10\n408.0\n20\n264.0\n30\n0.0\n', ''), /no \$EXTMAX/],
  ['a header variable in the wrong group', swap('9\n$LTSCALE\n40\n', '9\n$LTSCALE\n41\n'), /\$LTSCALE has groups 41/],
  ['units and measurement that differ', swap('$INSUNITS\n70\n1\n', '$INSUNITS\n70\n4\n'), /\$INSUNITS and \$MEASUREMENT/],
  ['feet for units', swap('$INSUNITS\n70\n1\n', '$INSUNITS\n70\n2\n'), /\$INSUNITS and \$MEASUREMENT/],
  ['a dimension style in force that is not there', swap('$DIMSTYLE\n2\nSIZES-1', '$DIMSTYLE\n2\nSIZES-9'), /\$DIMSTYLE SIZES-9 is not defined/],
  ['a seed that is used', swap(/\$HANDSEED\n5\n[0-9A-F]+/, '$HANDSEED\n5\n20'), /not under the seed/],
  ['a handle twice', swap('\n5\nA1\n', '\n5\nA2\n'), /a second time/],
  ['an entity without a handle', swap('\n5\nA1\n', '\n'), /has no handle/],
  ['an entity without an owner', swap(/\n5\nA1\n330\nA\n/, '\n5\nA1\n'), /has no owner/],
  ['an owner that is not there', swap(/\n5\nA1\n330\nA\n/, '\n5\nA1\n330\nFFFF\n'), /points at nothing: FFFF/],
  ['an entity that a layer owns', swap(/\n5\nA1\n330\nA\n/, '\n5\nA1\n330\n3\n'), /ARC: wrong owner 3/],
  ['an entity of the model that a dimension’s block owns', swap(/\n5\nA1\n330\nA\n/, '\n5\nA1\n330\n10\n'), /ARC: wrong owner 10/],
  ['a text style that is not there', swap(/\n340\n(?!0)[0-9A-F]+\n371/, '\n340\nFFFF\n371'), /points at nothing/],
  ['a plot style that is not there', swap(/\n390\n[0-9A-F]+/, '\n390\nFFFF'), /group 390 points at nothing/],
  ['a missing table', swap(/0\nTABLE\n2\nUCS\n[^]*?ENDTAB\n/, ''), /tables are/],
  ['a table that miscounts', swap(/(0\nTABLE\n2\nLAYER\n(?:.*\n){6}70\n)8/, '$19'), /counts 9 records, has 8/],
  ['a layer twice', swap('\n2\nMARKS\n70', '\n2\nNotes\n70'), /table LAYER has a name twice/],
  ['a layer that is not defined', swap('\n2\nMARKS\n70', '\n2\nMARKER\n70'), /layer MARKS is not defined/],
  ['a colored layer', swap('\n2\nMARKS\n70\n0\n62\n7\n', '\n2\nMARKS\n70\n0\n62\n1\n'), /color carries no meaning/],
  ['an entity with a color of its own', swap('\n8\nFRAME\n', '\n8\nFRAME\n62\n1\n'), /has a color of its own/],
  ['a lineweight of no kind', swap('\n370\n60\n', '\n370\n61\n'), /no such lineweight/],
  ['a linetype that is not defined', swap('\n8\nSTEEL\n6\nHIDDEN\n', '\n8\nSTEEL\n6\nDOTTED\n'), /linetype DOTTED is not defined/],
  ['a linetype that miscounts its dashes', swap('\n73\n2\n', '\n73\n3\n'), /dashes are not as many/],
  ['a linetype of another length', swap('\n73\n2\n40\n4.32\n', '\n73\n2\n40\n4.2\n'), /dashes are not as long/],
  ['a layer outside AcDbEntity', swap(/100\nAcDbEntity\n8\nFRAME\n370\n60\n100\nAcDbLine\n/, '100\nAcDbEntity\n370\n60\n100\nAcDbLine\n8\nFRAME\n'), /layer is not once inside AcDbEntity/],
  ['a layer before AcDbEntity', swap('100\nAcDbEntity\n8\nFRAME\n', '8\nFRAME\n100\nAcDbEntity\n'), /something stands before AcDbEntity/],
  ['a missing subclass', swap('100\nAcDbLine\n', ''), /LINE has subclasses/],
  ['a subclass of another kind', swap('100\nAcDbLine\n', '100\nAcDbCircle\n'), /LINE has subclasses/],
  ['angles in the wrong subclass', swap(/100\nAcDbArc\n50\n(.*)\n51\n(.*)\n/, '50\n$1\n51\n$2\n100\nAcDbArc\n'), /no group 50 in AcDbArc/],
  ['a line with one end', swap(/11\n408?.*\n21\n.*\n31\n0.0\n|11\n398.4\n21\n9.6\n31\n0.0\n/, ''), /no group 11 in AcDbLine/],
  ['a circle of no radius', swap('\n40\n10.8\n', '\n40\n0.0\n'), /radius 0.0/],
  ['an arc of one angle', swap(/50\n(17.188733853925)\n51\n131.\d+\n/, '50\n$1\n51\n$1\n'), /its two angles are one/],
  ['an angle past a turn', swap(/50\n(17.188733853925)\n/, '50\n377.188733853925\n'), /angles 377/],
  ['a bow tie', swap(/12\n336.0\n22\n170.4\n32\n0.0\n13\n360.0\n/, '12\n360.0\n22\n170.4\n32\n0.0\n13\n336.0\n'), /bow tie/],
  ['a polyline that miscounts', swap('\n90\n2\n70\n1\n', '\n90\n3\n70\n1\n'), /vertices are not as many/],
  ['a text style that is not defined', swap('\n7\nDRAWING\n72', '\n7\nDRAFT\n72'), /text style is not defined/],
  ['a text that is not fitted', swap('\n72\n5\n', '\n72\n0\n'), /is not fitted/],
  ['a text without its second marker', swap('100\nAcDbText\n73\n', '73\n'), /TEXT has subclasses/],
  ['a point outside the extents', swap(/11\n398.4\n21\n9.6\n/, '11\n498.4\n21\n9.6\n'), /lies outside the extents/],
  ['an entity of another kind', swap('0\nCIRCLE\n', '0\nELLIPSE\n'), /ELLIPSE does not belong/],
  ['a dimension without its kind’s subclass', swap('100\nAcDbRotatedDimension\n', ''), /DIMENSION has subclasses/],
  ['a dimension without its second point', swap(/14\n84.0\n24\n57.6\n34\n0.0\n/, ''), /no group 14/],
  ['a dimension of another kind', swap('\n70\n160\n', '\n70\n162\n'), /kind 162/],
  ['a dimension style that is not defined', swap('\n3\nSIZES-1\n100', '\n3\nSIZES-7\n100'), /dimension style is not defined/],
  ['a dimension whose block is not there', swap('100\nAcDbDimension\n2\n*D1\n', '100\nAcDbDimension\n2\n*D99\n'), /block \*D99 draws nothing/],
  ['two dimensions of one block', swap('100\nAcDbDimension\n2\n*D1\n', '100\nAcDbDimension\n2\n*D2\n'), /is not the picture of one dimension/],
  ['a block without a record', swap(/0\nBLOCK_RECORD\n5\n[0-9A-F]+\n330\n9\n100\n.*\n100\n.*\n2\n\*D1\n340\n0\n/, ''), /has no record|counts/],
  ['a block with two names', swap('\n3\n*D1\n', '\n3\n*D2\n'), /its two names differ/],
  ['a style without a factor', swap('\n144\n0.166666666667\n', '\n'), /SIZES-2: no factor/],
  ['a root dictionary that is not first', swap(/0\nSECTION\n2\nOBJECTS\n/, '0\nSECTION\n2\nOBJECTS\n0\nACDBPLACEHOLDER\n5\n1\n330\n0\n'), /root dictionary is not the first/],
  ['no list of layouts', swap(/3\nACAD_LAYOUT\n350\n[0-9A-F]+\n/, ''), /no ACAD_LAYOUT/],
  ['a layout that names another space', swap(/(AcDbLayout\n1\nModel\n[^]*?\n330\n)A\n/, '$1B\n'), /do not name each other/],
  ['an entry that is owned elsewhere', swap(/(0\nLAYOUT\n5\n[0-9A-F]+\n330\n)[0-9A-F]+/, '$1A'), /is not owned by it|wrong owner/],
];

describe('structure of a DXF', () => {
  test.each(sheets.map((sheet) => [sheet.number, sheet] as const))('sheet %s is sound', (_, sheet) => {
    expect(dxfBreaches(writeDxf(sheet, font))).toEqual([]);
  });

  test.each(BROKEN)('%s is found', (_, text, said) => {
    expect(dxfBreaches(text).join('\n')).toMatch(said);
  });

  test('the styles of the views are those that are needed: one at the scale of the drawing, one at the detail’s', () => {
    const factors = (text: string): string[] => [...text.matchAll(/AcDbDimStyleTableRecord\n2\n(SIZES-\d)\n(?:.*\n)*?144\n(.*)\n/g)].map((match) => `${match[1] ?? ''} ${match[2] ?? ''}`);
    expect(factors(sound)).toEqual(['SIZES-1 1.0', 'SIZES-2 0.166666666667']);
    expect(factors(writeDxf(metricSheet, font))).toEqual(['SIZES-1 1.0', 'SIZES-2 0.133333333333']);
    expect(factors(writeDxf(coverSheet, font))).toEqual(['SIZES-1 1.0']);
  });
});
