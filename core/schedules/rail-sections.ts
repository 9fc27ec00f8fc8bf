import { type Brief } from '../brief/types.ts';
import { type Section } from '../steel/index.ts';

/** The sections of a brief's rails by name. */
export function railSections(brief: Brief): ReadonlyMap<string, Section> {
  const { crowdPen, alley, junction, chute } = brief.fences;
  const fences = [crowdPen, alley.left, alley.right, junction.left, junction.right, chute.left, chute.right];
  return new Map(fences.map((fence) => [fence.rail.name, fence.rail]));
}
