/** TEXT fitted between the two ends of its baseline, so that it is as wide as it was measured, whatever font the reader has. */
import { type TextStroke, baseline } from '../baseline.ts';
import { type Place, openPlain } from './entity.ts';
import { TEXT_STYLE } from './styles.ts';
import { dxfText } from './text.ts';
import { turnDegrees } from './units.ts';

/** Group 72: fitted between the first and the second alignment point, at the height given. */
const FIT = 5;

/** Writes one text. A blank one leaves nothing on the paper, and two ends in one place cannot be fitted: it is left out. */
export function textEntity(place: Place, stroke: TextStroke): void {
  const text = dxfText(stroke.text);
  if (text.trim() === '' || !(stroke.width > 0)) return;
  const { tags, units } = place;
  const { from, to } = baseline(stroke);
  openPlain(place, 'TEXT', stroke.layer, 'AcDbText');
  tags.point(10, units.point(from));
  tags.real(40, units.length(stroke.height));
  tags.put(1, text);
  tags.fine(50, turnDegrees(stroke.rotation));
  tags.put(7, TEXT_STYLE);
  tags.put(72, FIT);
  tags.point(11, units.point(to));
  tags.put(100, 'AcDbText');
  tags.put(73, 0);
}
