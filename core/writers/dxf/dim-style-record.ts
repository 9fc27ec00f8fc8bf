/** A dimension style: how a reader that draws a dimension anew would draw it. Paper inches, made drawing units by DIMSCALE. */
import { type DimStyle } from './dim-styles.ts';
import { type Drawing } from './drawing.ts';
import { openRecord } from './record.ts';
import { lineweight } from './styles.ts';

/** An arrowhead is as long as a letter is high, a gap half of it: near what the drafting step draws. */
export function dimStyleRecord(drawing: Drawing, style: DimStyle): void {
  const { tags, units, sheet, fixed } = drawing;
  const letter = sheet.paper.text;
  openRecord(drawing, 'DIMSTYLE', 'AcDbDimStyleTableRecord', style.name);
  tags.put(70, 0);
  tags.real(40, units.perInch); // DIMSCALE
  tags.real(41, letter); // DIMASZ, arrowhead
  tags.real(42, letter / 2); // DIMEXO, gap before an extension line
  tags.real(44, letter / 2); // DIMEXE, extension line past the dimension line
  tags.put(73, 0); // DIMTIH, text lies along its line
  tags.put(74, 0); // DIMTOH, outside the extension lines too
  tags.put(77, 1); // DIMTAD, above its line
  tags.put(78, 3); // DIMZIN: 3'-0", and no 0' before inches
  tags.real(140, letter); // DIMTXT
  tags.fine(144, style.factor); // DIMLFAC
  tags.real(147, letter / 2); // DIMGAP
  tags.put(271, units.metric ? 1 : 4); // DIMDEC: 0.1 mm, or 1/16 in
  tags.put(275, 0); // DIMAUNIT, decimal degrees
  tags.put(276, 2); // DIMFRAC, fractions on one line
  tags.put(277, units.metric ? 2 : 4); // DIMLUNIT: decimal, or feet and inches
  tags.put(278, 46); // DIMDSEP, a point
  tags.put(340, fixed.textStyle); // DIMTXSTY
  tags.put(371, lineweight('thin')); // DIMLWD
  tags.put(372, lineweight('thin')); // DIMLWE
}
