import { inches } from '../../base/quantity.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSection, gateSheet } from '../../brief/gate-steel.ts';
import { type Brief } from '../../brief/types.ts';
import { type Fence, type ManGate } from '../../layout/index.ts';
import { leafMembers } from './leaf.ts';
import { plateMember } from './member.ts';
import { type Made } from './made.ts';

/** A man gate's leaf and the flat stop on its free jamb. Along the leaf, x counts from the hinges' pin. */
export function manGateMembers(brief: Brief, gate: ManGate, fence: Fence): Made {
  const { frame, bar, ground, barGap, stop, strikeGap } = GATE_PRACTICE.manGate;
  const { hinge } = GATE_PRACTICE;
  const { height, solidFrom, solidTo, sheet } = fence.brief;
  const [bottom, top] = [inches(ground), height];
  const leaf = leafMembers({
    left: inches(hinge.barrel / 2),
    right: gate.swing.reach,
    bottom,
    top,
    frame: gateSection(frame),
    bar: gateSection(bar),
    barGap,
    skin: sheet === null || solidTo <= solidFrom ? null : { sheet, from: solidFrom, to: solidTo },
  }, brief.shop.sheets);
  if (leaf === null) return { ok: false };
  const jamb = gate.swing.reach + strikeGap;
  // Behind the leaf, edge on to the ends of the rails (or to the post, where they end on it).
  const side = plateMember('stop', gateSheet(stop.plate), jamb - stop.width, jamb, bottom, top);
  return {
    ok: true,
    members: [...leaf.map((member) => ({ member, moves: true })), { member: side, moves: false }],
    hardware: [
      { item: 'hinge', size: { kind: 'barrel', diameter: inches(hinge.barrel), length: inches(hinge.length) }, quantity: 2, path: gate.path },
      { item: 'spring', size: null, quantity: 1, path: gate.path },
      { item: 'spring-eye', size: null, quantity: 2, path: gate.path },
    ],
  };
}
