import { inches } from '../../base/quantity.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSection, gateSheet } from '../../brief/gate-steel.ts';
import { type Brief } from '../../brief/types.ts';
import { type CrowdGate } from '../../layout/index.ts';
import { leafMembers } from './leaf.ts';
import { plateMember } from './member.ts';
import { type Made } from './made.ts';

/** The crowd gate's solid leaf, and the ratchet's teeth on the outer fence. Along the leaf, x counts from the pivot post's center. */
export function crowdGateMembers(brief: Brief, gate: CrowdGate): Made {
  const { frame, bar, ground, barGap, tooth } = GATE_PRACTICE.crowdGate;
  const { height, sheet } = brief.fences.crowdPen;
  const leaf = leafMembers({
    left: gate.from,
    right: gate.swing.reach,
    bottom: inches(ground),
    top: height,
    frame: gateSection(frame),
    bar: gateSection(bar),
    barGap,
    gussets: true,
    skin: { sheet: sheet ?? gateSheet('12 ga'), from: inches(ground), to: height },
  }, brief.shop.sheets);
  if (leaf === null) return { ok: false };
  const plate = gateSheet(tooth.plate);
  const teeth = gate.teeth.map((u) => plateMember('tooth', plate, u - tooth.width / 2, u + tooth.width / 2, height, height + tooth.length));
  const { pivotPost } = brief.crowdPen;
  return {
    ok: true,
    members: [...leaf.map((member) => ({ member, moves: true })), ...teeth.map((member) => ({ member, moves: false }))],
    hardware: [
      { item: 'ring-hinge', size: { kind: 'round', diameter: inches(Math.max(pivotPost.across, pivotPost.along)) }, quantity: 2, path: gate.path },
      { item: 'ratchet-latch', size: null, quantity: 1, path: gate.path },
    ],
  };
}
