/** A gate leaf: a mitred pipe frame, bars across it, a skin where it is closed. */
import { degrees, inches, type Inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Section, type Sheet } from '../../steel/index.ts';
import { copeReach } from '../saddle.ts';
import { skinCourses, type StockSheets } from '../skin-courses.ts';
import { USUAL_SHEETS } from '../stock.ts';
import { gussetMembers } from './gussets.ts';
import { barMember, plateMember, type Member } from './member.ts';

export interface LeafSpec {
  /** Outer edges of the frame: along the leaf, and heights from the ground. */
  readonly left: Inches;
  readonly right: Inches;
  readonly bottom: Inches;
  readonly top: Inches;
  readonly frame: Section;
  readonly bar: Section;
  /** Greatest clear height between bars. */
  readonly barGap: number;
  /** Plates in its corners, where it is wide. */
  readonly gussets: boolean;
  /** Closed between these heights, as far as the leaf reaches; null: open. */
  readonly skin: { readonly sheet: Sheet; readonly from: Inches; readonly to: Inches } | null;
}

const MITRE = { kind: 'mitre', angle: degrees(45) } as const;
/** A skin in more pieces than this is none that a shop would make. */
const MOST_PANELS = 40;

/** The members of a leaf; null where no stock sheet holds its skin. */
export function leafMembers(spec: LeafSpec, sheets: StockSheets): readonly Member[] | null {
  const skin = spec.skin === null ? [] : skinMembers(spec, spec.skin, sheets);
  return skin === null ? null : [...frameMembers(spec), ...barMembers(spec), ...skin, ...(spec.gussets ? gussetMembers(spec, barHeights(spec), spec.bar) : [])];
}

/** Two stiles and two rails, mitred at the corners: long point to long point is the frame's outer size. */
function frameMembers({ left, right, bottom, top, frame }: LeafSpec): readonly Member[] {
  const r = frame.across / 2;
  const upright = (x: number): Member =>
    barMember('stile', frame, { x, y: bottom + r }, { x, y: top - r }, { long: top - bottom, short: top - bottom - 2 * frame.across, cut: MITRE });
  const level = (y: number): Member =>
    barMember('rail', frame, { x: left + r, y }, { x: right - r, y }, { long: right - left, short: right - left - 2 * frame.across, cut: MITRE });
  return [upright(left + r), upright(right - r), level(bottom + r), level(top - r)];
}

/** Heights of the bars: evenly between the frame's rails; where the skin ends between them, the nearest one moves there. */
export function barHeights({ bottom, top, frame, bar, barGap, skin }: LeafSpec): readonly Inches[] {
  const low = bottom + frame.across;
  const high = top - frame.across;
  const count = Math.max(1, Math.ceil((high - low - barGap) / (barGap + bar.across) - SAME_LENGTH));
  const pitch = (high - low) / (count + 1);
  const rows = Array.from({ length: count }, (_, i) => inches(low + pitch * (i + 1)));
  for (const end of skin === null ? [] : [skin.from, skin.to]) {
    if (end < low + bar.across || end > high - bar.across) continue;
    const away = rows.map((row) => Math.abs(row - end));
    rows[away.indexOf(Math.min(...away))] = end;
  }
  return rows;
}

function barMembers(spec: LeafSpec): readonly Member[] {
  const { left, right, frame, bar } = spec;
  const r = inches(frame.across / 2);
  const { long, short } = copeReach(bar.across / 2, r);
  const between = right - left - frame.across;
  const ends = { long: between - 2 * long, short: between - 2 * short, cut: { kind: 'cope', postRadius: r } as const };
  return barHeights(spec).map((y) => barMember('bar', bar, { x: left + r, y }, { x: right - r, y }, ends));
}

/** The skin from frame axis to frame axis, in as few panels side by side as the stock allows, each in courses that part on bars. */
function skinMembers(spec: LeafSpec, { sheet, from, to }: NonNullable<LeafSpec['skin']>, sheets: StockSheets): readonly Member[] | null {
  const r = spec.frame.across / 2;
  const [bottom, top] = [Math.max(from, spec.bottom + r), Math.min(to, spec.top - r)];
  if (top - bottom < SAME_LENGTH) return [];
  const [left, right] = [spec.left + r, spec.right - r];
  for (let panels = 1; panels <= MOST_PANELS; panels++) {
    const width = (right - left) / panels;
    const courses = skinCourses(sheets.length === 0 ? USUAL_SHEETS : sheets, inches(width), bottom, top, barHeights(spec).toSorted((a, b) => a - b));
    if (courses === null) continue;
    return Array.from({ length: panels }, (_, i) => courses.slice(1).map((high, course) =>
      plateMember('skin', sheet, left + i * width, left + (i + 1) * width, courses[course]!, high))).flat();
  }
  return null;
}
