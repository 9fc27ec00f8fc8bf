import { parseSection, parseSheet, type Section, type Sheet } from '../steel/index.ts';
import { GATE_PRACTICE } from './gate-practice.ts';
import { type OpeningBrief } from './opening-brief.ts';
import { type FenceBrief } from './types.ts';

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
  const { crowdGate, manGate, backstop, latchedGate: { frame, bar, bolt } } = GATE_PRACTICE;
  const has = (kind: OpeningBrief['kind']): boolean => openings.some((one) => one.kind === kind);
  return [
    crowdGate.frame, crowdGate.bar,
    ...(has('man-gate') ? [manGate.frame, manGate.bar] : []),
    ...(has('pen-gate') || has('alley-gate') ? [frame, bar, bolt.section, bolt.sleeve, bolt.handle] : []),
    ...(has('backstop') ? [backstop.beam, backstop.frame, backstop.bar, backstop.guide] : []),
  ].map(gateSection).concat(openings.flatMap((one) => (one.kind === 'pen-gate' ? [one.hingePost ?? usualHingePost(one.width)] : [])));
}

/** The post that a leaf of this clear width usually hangs on. */
export function usualHingePost(width: number): Section {
  const list = GATE_PRACTICE.latchedGate.hingePosts;
  return gateSection((list.find(({ to }) => width <= to) ?? list[list.length - 1]!).post);
}

/**
 * The post that a pen gate hangs on in this fence: the one asked for, else the usual one where it is thicker than the fence's own. On
 * a coped fence, whose panels end on posts all alike, the fence's own.
 */
export function hingePostOf(fence: FenceBrief, { hingePost, width }: { readonly hingePost: Section | null; readonly width: number }): Section {
  if (fence.construction === 'coped') return fence.post;
  if (hingePost !== null) return hingePost;
  const usual = usualHingePost(width);
  return usual.across > fence.post.across ? usual : fence.post;
}
