import { inches, pounds } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Brief } from '../../brief/types.ts';
import { pieceKey, type DraftPiece } from '../draft-piece.ts';
import { type FaultList } from '../faults.ts';
import { fitsSheet, coursesThatFit } from '../skin-courses.ts';
import { type EndCut } from '../types.ts';
import { type SlopedSpan } from './slope-rails.ts';

/**
 * The sheets of a solid ramp side. On the slope each is a parallelogram: ends plumb, edges parallel to the line that the fence follows.
 * Its length is that of its edges, its height is square to them, so that the two give its area. Laid on a stock sheet with its edges
 * or its ends along the sheet's.
 */
export function slopeSkins(brief: Brief, { fence, span, slope }: SlopedSpan, faults: FaultList): readonly DraftPiece[] {
  const { sheet, solidFrom, solidTo } = fence.brief;
  if (sheet === null || solidTo <= solidFrom) return [];
  const { sheets } = brief.shop;
  const [cos, sin] = [Math.cos(slope), Math.sin(slope)];
  const stops = span.posts.map((u, i) => (i === 0 ? span.skinFrom : i === span.posts.length - 1 ? span.skinTo : u));
  const bays = stops.length - 1;
  const level = (from: number, to: number): number => stops[to]! - stops[from]!;
  const fits = (wide: number, high: number): boolean =>
    fitsSheet(sheets, wide / cos + high * sin, high * cos) || fitsSheet(sheets, wide, high + wide * Math.tan(slope));
  const widest = Math.max(...Array.from({ length: bays }, (_, i) => level(i, i + 1)));
  const courses = coursesThatFit((high) => fits(widest, high), solidFrom, solidTo, fence.section.rows);
  if (courses === null) {
    const side = Math.max(...sheets.flat());
    const length = widest / cos;
    if (length > side + SAME_LENGTH) faults.skinOverStock(fence, length, solidTo - solidFrom, side);
    else faults.skinTooTall(fence, solidTo - solidFrom);
    return [];
  }
  const cut: EndCut = slope === 0 ? { kind: 'square' } : { kind: 'plumb', slope };
  return courses.slice(1).flatMap((top, course) => {
    const bottom = courses[course]!;
    const high = top - bottom;
    const pieces: DraftPiece[] = [];
    for (let from = 0; from < bays;) {
      let to = from + 1;
      while (to < bays && fits(level(from, to + 1), high)) to++;
      const wide = level(from, to);
      pieces.push({
        key: pieceKey('skin', fence.run, fence.side, span.firstBay + from, course),
        kind: 'skin',
        section: sheet.name,
        length: inches(wide / cos),
        lengthShort: null,
        flatHeight: inches(high * cos),
        bend: null,
        weight: pounds(sheet.weightPerArea * wide * high),
        run: fence.run,
        side: fence.side,
        bay: span.firstBay + from,
        bays: to - from,
        ends: [cut, cut],
        place: { kind: 'skin', from: stops[from]!, to: stops[to]!, bottom: inches(bottom), top: inches(top) },
      });
      from = to;
    }
    return pieces;
  });
}
