import { type Contour } from '../../base/flat-shape.ts';
import { type Brief } from '../../brief/types.ts';
import { isBar, type Parts, type Piece } from '../../parts/index.ts';
import { parseSection, type Section } from '../../steel/index.ts';

export interface CoatedArea {
  /** Square inches: the outside of every bar, both faces of every sheet. Ends and edges are not counted. */
  readonly area: number;
  readonly pieces: number;
  /** Sections whose outside is not known here: timber among them. */
  readonly left: readonly string[];
}

/** The surface that is coated, coped and mitred bars at their mean length. */
export function coatedArea(brief: Brief, parts: Parts): CoatedArea {
  const known = new Map<string, Section | null>(sectionsOf(brief).map((section) => [section.name, section]));
  const left = new Set<string>();
  let area = 0;
  let pieces = 0;
  for (const piece of parts.pieces) {
    if (!isBar(piece)) {
      area += 2 * faceOf(piece);
      pieces += 1;
      continue;
    }
    if (!known.has(piece.section)) known.set(piece.section, parseSection(piece.section));
    const section = known.get(piece.section) ?? null;
    if (section === null) {
      left.add(piece.section);
      continue;
    }
    const round = section.shape === 'round' ? Math.PI * section.across : 2 * (section.across + section.along);
    area += (round * (piece.length + (piece.lengthShort ?? piece.length))) / 2;
    pieces += 1;
  }
  return { area, pieces, left: [...left] };
}

function sectionsOf({ fences: { crowdPen, alley, junction, chute, ramp }, crowdPen: { pivotPost } }: Brief): readonly Section[] {
  const all = [crowdPen, ...[alley, junction, chute, ramp].flatMap(({ left, right }) => [left, right])];
  return [pivotPost, ...all.flatMap(({ rail, post }) => [rail, post])];
}

function faceOf({ length, flatHeight, flat }: Piece): number {
  if (flat === undefined) return length * (flatHeight ?? 0);
  return contourArea(flat.outer) - flat.holes.reduce((sum, hole) => sum + contourArea(hole), 0);
}

/** Of a closed line: its corners' polygon and what each arc adds to it (bulge = tan(angle / 4)). */
function contourArea(contour: Contour): number {
  if (contour.kind === 'circle') return Math.PI * contour.radius ** 2;
  const { corners } = contour;
  const twice = corners.reduce((sum, a, index) => {
    const b = corners[(index + 1) % corners.length]!;
    const angle = 4 * Math.atan(a.bulge);
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    const radius = angle === 0 ? 0 : chord / (2 * Math.sin(angle / 2));
    return sum + a.x * b.y - b.x * a.y + radius * radius * (angle - Math.sin(angle));
  }, 0);
  return Math.abs(twice) / 2;
}
