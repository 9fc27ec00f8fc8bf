import { type Brief } from '../../brief/types.ts';
import { type Layout } from '../../layout/index.ts';
import { type Parts, ventHole, type VentHole } from '../../parts/index.ts';
import { parseSection, type Section } from '../../steel/index.ts';

/** Every hollow section that a galvanized project dips; none where it is painted or bare. */
export function ventRows(brief: Brief, layout: Layout, parts: Parts): readonly VentHole[] {
  if (brief.shop.coating !== 'galvanized') return [];
  const known = new Map<string, Section>();
  for (const section of [brief.crowdPen.pivotPost, ...layout.fences.flatMap((fence) => [fence.brief.rail, fence.brief.post])]) known.set(section.name, section);
  const used = new Set(parts.pieces.filter(({ flatHeight }) => flatHeight === null).map(({ section }) => section));
  return [...used].sort().flatMap((name) => {
    const section = known.get(name) ?? parseSection(name);
    return section === null ? [] : [ventHole(section)];
  });
}
