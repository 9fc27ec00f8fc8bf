import { type CatwalkBrief } from './catwalk-brief.ts';
import { CATWALK_PRACTICE } from './catwalk-practice.ts';
import { gateSection } from './gate-steel.ts';
import { type Section } from '../steel/index.ts';

/** The bars that a project's catwalks take. */
export function catwalkSections(catwalks: readonly CatwalkBrief[]): readonly Section[] {
  if (catwalks.length === 0) return [];
  const { bearer, leg, guard, steps } = CATWALK_PRACTICE;
  const names = [bearer.section, leg.section, guard.post, guard.top, guard.mid, steps.stringer, steps.rail, steps.railPost];
  return [...new Set(names)].map(gateSection);
}
