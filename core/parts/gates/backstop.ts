import { inches } from '../../base/quantity.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { type Brief, type Side } from '../../brief/types.ts';
import { type Backstop, type Fence } from '../../layout/index.ts';
import { leafMembers } from './leaf.ts';
import { squareBar, type Member } from './member.ts';
import { type Made } from './made.ts';

/** Height of the beam's underside, inches: the leaf held up with its foot at the clear height, and its eye over it. */
export const beamHeight = (): number => GATE_PRACTICE.backstop.clearUnder + GATE_PRACTICE.backstop.leafHeight + 2;

/** Rope past the beam in whole feet. */
const whole = (length: number): number => Math.ceil(length / 12) * 12;

/**
 * A backstop: an upright on each of the two posts, a beam on both, four round guides from the leaf's foot to the beam, and the leaf that
 * slides between them. Seen as the cattle come to it; across, x counts from the left face.
 */
export function backstopMembers(brief: Brief, gate: Backstop, fences: Readonly<Record<Side, Fence>>): Made {
  const { beam, frame, bar, guide, bottom, leafHeight, sideGap, guideGap, ropeReach } = GATE_PRACTICE.backstop;
  const sections = { beam: gateSection(beam), frame: gateSection(frame), guide: gateSection(guide) };
  const under = beamHeight();
  const axis = { left: -fences.left.section.k, right: gate.width + fences.right.section.k };
  const leaf = leafMembers({
    left: inches(sideGap),
    right: inches(gate.width - sideGap),
    bottom: inches(bottom),
    top: inches(bottom + leafHeight),
    frame: sections.frame,
    bar: gateSection(bar),
    barGap: GATE_PRACTICE.manGate.barGap,
    gussets: false,
    skin: null,
  }, brief.shop.sheets);
  if (leaf === null) return { ok: false };
  const sides = (['left', 'right'] as const);
  const uprights = sides.map((side): Member => {
    const { post, height } = fences[side].brief;
    return squareBar('upright', post, { x: axis[side], y: height }, { x: axis[side], y: under });
  });
  const over = sections.beam.across / 2;
  const half = (side: Side): number => fences[side].brief.post.across / 2;
  const across = squareBar('beam', sections.beam, { x: axis.left - half('left'), y: under + over }, { x: axis.right + half('right'), y: under + over });
  // Two on each face, before and behind the leaf: from the front they stand one over the other.
  const guides = sides.flatMap((side) => {
    const x = side === 'left' ? sections.guide.across / 2 : gate.width - sections.guide.across / 2;
    return [0, 1].map(() => squareBar('guide', sections.guide, { x, y: bottom }, { x, y: under }));
  });
  const rope = whole(under - bottom + gate.width + ropeReach);
  return {
    ok: true,
    members: [...[...uprights, across, ...guides].map((member) => ({ member, moves: false })), ...leaf.map((member) => ({ member, moves: true }))],
    hardware: [
      { item: 'guide-shoe', size: { kind: 'clear', gap: inches(guideGap) }, quantity: 4, path: gate.path },
      ...(gate.held === 'rope'
        ? [
          { item: 'rope', size: { kind: 'length', length: inches(rope) }, quantity: 1, path: gate.path } as const,
          { item: 'pulley', size: null, quantity: 2, path: gate.path } as const,
          { item: 'rope-cleat', size: null, quantity: 1, path: gate.path } as const,
        ]
        : []),
      ...(gate.held === 'pin' ? [{ item: 'hold-pin', size: null, quantity: 2, path: gate.path } as const] : []),
    ],
  };
}
