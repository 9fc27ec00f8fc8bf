import { inches, type Inches } from '../../base/quantity.ts';
import { NOISE } from '../../base/tolerance.ts';
import { type Brief } from '../../brief/types.ts';
import { type Layout } from '../../layout/index.ts';
import { type Parts } from '../../parts/index.ts';
import { parseSection, type Section } from '../../steel/index.ts';
import { SET_UP_PRACTICE } from './practice.ts';

/** Holes at each end of a closed hollow piece, so that zinc runs out and steam can't burst it in the bath. */
export interface VentRow {
  readonly section: string;
  /** Inside diameter, or the lesser inside width. */
  readonly inside: Inches;
  /** Diameter of one hole at each end, or of each of two. */
  readonly one: Inches;
  readonly two: Inches;
}

const up = (value: number): Inches => inches(Math.ceil(value * 16 - NOISE) / 16);

/** By the area inside: one hole lets `share` of it through, two holes half each; never over the inside, to the next 1/16 in. */
export function ventHole(section: Section): VentRow {
  const { shape, across, along, wall } = section;
  const [a, b] = [across - 2 * wall, along - 2 * wall];
  const area = shape === 'round' ? (Math.PI * a ** 2) / 4 : a * b;
  const { share } = SET_UP_PRACTICE.vent.find(({ under }) => Math.max(across, along) < under)!;
  const hole = (holes: number): Inches => inches(Math.min(Math.min(a, b), Math.max(SET_UP_PRACTICE.leastHole, up(Math.sqrt((4 * area * share) / holes / Math.PI)))));
  return { section: section.name, inside: inches(Math.min(a, b)), one: hole(1), two: hole(2) };
}

/** Every hollow section that a galvanized project dips; none where it is painted or bare. */
export function ventRows(brief: Brief, layout: Layout, parts: Parts): readonly VentRow[] {
  if (brief.shop.coating !== 'galvanized') return [];
  const known = new Map<string, Section>();
  for (const section of [brief.crowdPen.pivotPost, ...layout.fences.flatMap((fence) => [fence.brief.rail, fence.brief.post])]) known.set(section.name, section);
  const used = new Set(parts.pieces.filter(({ flatHeight }) => flatHeight === null).map(({ section }) => section));
  return [...used].sort().flatMap((name) => {
    const section = known.get(name) ?? parseSection(name);
    return section === null ? [] : [ventHole(section)];
  });
}
