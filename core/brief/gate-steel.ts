import { parseSection, parseSheet, type Section, type Sheet } from '../steel/index.ts';
import { GATE_PRACTICE } from './gate-practice.ts';
import { type OpeningBrief } from './opening-brief.ts';

/** A section that gates are built of, by its name in the table of practice. Throws for one that is not made: a programmer's mistake. */
export function gateSection(name: string): Section {
  const section = parseSection(name);
  if (section === null) throw new Error(`no such section: ${name}`);
  return section;
}

/** A plate or sheet that gates are built of. Throws for one that is not made. */
export function gateSheet(name: string): Sheet {
  const sheet = parseSheet(name);
  if (sheet === null) throw new Error(`no such sheet: ${name}`);
  return sheet;
}

/** The bars that a project's gates take: the crowd gate's in any, the others' where it has such an opening. */
export function gateSections(openings: readonly OpeningBrief[]): readonly Section[] {
  const { crowdGate, manGate, backstop } = GATE_PRACTICE;
  const has = (kind: OpeningBrief['kind']): boolean => openings.some((one) => one.kind === kind);
  return [
    crowdGate.frame, crowdGate.bar,
    ...(has('man-gate') ? [manGate.frame, manGate.bar] : []),
    ...(has('backstop') ? [backstop.beam, backstop.frame, backstop.bar, backstop.guide] : []),
  ].map(gateSection);
}
