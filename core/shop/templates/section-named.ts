import { type Brief } from '../../brief/index.ts';
import { parseSection, type Section } from '../../steel/index.ts';

/**
 * Finds the section of a piece by its name: those that the brief's fences use, the shop's own among them, and those of our own tables.
 * null for a sheet, a timber, and whatever else is no bar.
 */
export function sectionsByName(brief: Brief): (name: string) => Section | null {
  const { crowdPen, ...sided } = brief.fences;
  const fences = [crowdPen, ...Object.values(sided).flatMap(({ left, right }) => [left, right])];
  const known = new Map<string, Section | null>(fences.flatMap(({ rail, post }) => [[rail.name, rail], [post.name, post]] as const));
  return (name) => {
    const found = known.get(name);
    if (found !== undefined) return found;
    const parsed = parseSection(name);
    known.set(name, parsed);
    return parsed;
  };
}
