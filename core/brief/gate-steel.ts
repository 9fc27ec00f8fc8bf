import { parseFlatBar, parseSection, parseSheet, type FlatBar, type Section, type Sheet } from '../steel/index.ts';
import { GATE_PRACTICE } from './gate-practice.ts';
import { type OpeningBrief, type PenGateBrief } from './opening-brief.ts';
import { type FenceBrief, type Side } from './types.ts';

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

/** A flat bar that gates are built of. Throws for one that is not made. */
export function gateFlat(name: string): FlatBar {
  const flat = parseFlatBar(name);
  if (flat === null) throw new Error(`no such flat bar: ${name}`);
  return flat;
}

type HasHingePost = Pick<PenGateBrief, 'hingePost' | 'width'>;

/** The bars that a project's gates take: the crowd gate's in any, the others' where it has such an opening; the posts that they hang on. */
export function gateSections(openings: readonly OpeningBrief[], fenceOf: (run: string, side: Side) => FenceBrief): readonly Section[] {
  const { crowdGate, manGate, backstop, latchedGate: { frame, bar, bolt } } = GATE_PRACTICE;
  const has = (kind: OpeningBrief['kind']): boolean => openings.some((one) => one.kind === kind);
  const bars = [
    crowdGate.frame, crowdGate.bar,
    ...(has('man-gate') ? [manGate.frame, manGate.bar] : []),
    ...(has('pen-gate') || has('alley-gate') ? [frame, bar, bolt.section, bolt.sleeve, bolt.handle] : []),
    ...(has('backstop') ? [backstop.beam, backstop.frame, backstop.bar, backstop.guide] : []),
  ];
  const posts = openings.flatMap((one) => (one.kind === 'pen-gate' || one.kind === 'alley-gate' ? [hingePostOf(fenceOf(one.run, one.side), one)] : []));
  return [...bars.map(gateSection), ...posts];
}

/** The post that a leaf of this clear width usually hangs on; a closed leaf weighs more and takes the next thicker one. */
function usualHingePost(width: number, closed: boolean): Section {
  const list = GATE_PRACTICE.latchedGate.hingePosts;
  const found = list.findIndex(({ to }) => width <= to);
  const at = Math.min(list.length - 1, (found < 0 ? list.length - 1 : found) + (closed ? 1 : 0));
  return gateSection(list[at]!.post);
}

/**
 * The post that a latched gate hangs on in this fence: the one asked for, else the usual one where it is thicker than the fence's own. On
 * a coped fence, whose panels end on posts all alike, the fence's own.
 */
export function hingePostOf(fence: FenceBrief, { hingePost, width }: HasHingePost): Section {
  if (fence.construction === 'coped') return fence.post;
  if (hingePost !== null) return hingePost;
  const usual = usualHingePost(width, fence.sheet !== null && fence.solidTo > fence.solidFrom);
  return usual.across > fence.post.across ? usual : fence.post;
}
