import { inches, pounds } from '../base/quantity.ts';
import { type Brief } from '../brief/types.ts';
import { lengthAtOffset, radiusAtOffset, type Fence, type Span } from '../layout/index.ts';
import { bendAngle } from './bend.ts';
import { pieceKey, type DraftPiece } from './draft-piece.ts';
import { type FaultList } from './faults.ts';
import { fitsSheet, skinCourses } from './skin-courses.ts';

/** The sheets of a solid span: they part on posts, each covers as many bays as a stock sheet holds. An open fence has none. */
export function skins(brief: Brief, fence: Fence, span: Span, faults: FaultList): readonly DraftPiece[] {
  const { sheet, solidFrom, solidTo } = fence.brief;
  if (sheet === null || solidTo <= solidFrom) return [];
  const { sheets } = brief.shop;
  const middle = sheet.thickness / 2;
  const stops = span.posts.map((u, i) => (i === 0 ? span.skinFrom : i === span.posts.length - 1 ? span.skinTo : u));
  const bays = stops.length - 1;
  const flat = (from: number, to: number): number => lengthAtOffset(fence, stops[from]!, stops[to]!, middle);
  const longest = Math.max(...Array.from({ length: bays }, (_, i) => flat(i, i + 1)));
  const courses = skinCourses(sheets, longest, solidFrom, solidTo, fence.section.rows);
  if (courses === null) {
    const side = Math.max(...sheets.flat());
    if (longest > side) faults.skinOverStock(fence, longest, solidTo - solidFrom, side);
    else faults.skinTooTall(fence, solidTo - solidFrom);
    return [];
  }
  const radius = radiusAtOffset(fence, middle);
  return courses.slice(1).flatMap((top, course) => {
    const bottom = courses[course]!;
    const pieces: DraftPiece[] = [];
    for (let from = 0; from < bays;) {
      let to = from + 1;
      while (to < bays && fitsSheet(sheets, flat(from, to + 1), top - bottom)) to++;
      const length = inches(flat(from, to));
      pieces.push({
        key: pieceKey('skin', fence.run, fence.side, span.firstBay + from, course),
        kind: 'skin',
        section: sheet.name,
        length,
        lengthShort: null,
        flatHeight: inches(top - bottom),
        bend: radius === null ? null : { radius, angle: bendAngle(radius, length) },
        weight: pounds(sheet.weightPerArea * length * (top - bottom)),
        run: fence.run,
        side: fence.side,
        bay: span.firstBay + from,
        bays: to - from,
        ends: [{ kind: 'square' }, { kind: 'square' }],
        place: { kind: 'skin', from: stops[from]!, to: stops[to]!, bottom: inches(bottom), top: inches(top) },
      });
      from = to;
    }
    return pieces;
  });
}
