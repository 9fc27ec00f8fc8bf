import { flatArea } from '../../base/flat-curves.ts';
import { type Brief } from '../../brief/types.ts';
import { isBar, type Parts, type Piece } from '../../parts/index.ts';
import { parseFlatBar, parseSection, type Section } from '../../steel/index.ts';

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
    // A template is a tool, and no part of what is built.
    if (piece.kind === 'form') continue;
    if (!isBar(piece)) {
      area += 2 * faceOf(piece);
      pieces += 1;
      continue;
    }
    const flat = parseFlatBar(piece.section);
    if (flat !== null) {
      area += 2 * (flat.width + flat.thickness) * piece.length;
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
  return flatArea(flat);
}
