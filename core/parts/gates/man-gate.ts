import { inches } from '../../base/quantity.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSection, gateSheet } from '../../brief/gate-steel.ts';
import { type Brief } from '../../brief/types.ts';
import { type Fence, type ManGate } from '../../layout/index.ts';
import { hingeTabs } from './hinge-tabs.ts';
import { barHeights, leafMembers, type LeafSpec } from './leaf.ts';
import { plateMember } from './member.ts';
import { type Made } from './made.ts';
import { springEyes } from './spring-eyes.ts';

/** A man gate's leaf, the flat stop on its free jamb, its hinges' tabs and its spring's eyes. Along the leaf, x counts from the hinges' pin. */
export function manGateMembers(brief: Brief, gate: ManGate, fence: Fence): Made {
  const { frame, bar, ground, barGap, stop, strikeGap } = GATE_PRACTICE.manGate;
  const { hinge } = GATE_PRACTICE;
  const { height, solidFrom, solidTo, sheet } = fence.brief;
  const [bottom, top] = [inches(ground), height];
  const spec: LeafSpec = {
    left: inches(hinge.barrel / 2),
    right: gate.swing.reach,
    bottom,
    top,
    frame: gateSection(frame),
    bar: gateSection(bar),
    barGap,
    gussets: false,
    skin: sheet === null || solidTo <= solidFrom ? null : { sheet, from: solidFrom, to: solidTo },
  };
  const leaf = leafMembers(spec, brief.shop.sheets);
  if (leaf === null) return { ok: false };
  const jamb = gate.swing.reach + strikeGap;
  // Behind the leaf, edge on to the ends of the rails (or to the post, where they end on it).
  const side = plateMember('stop', gateSheet(stop.plate), jamb - stop.width, jamb, bottom, top);
  const eyes = springEyes({ post: -hinge.barrel / 2 - fence.brief.post.along / 2, reach: gate.swing.reach, bottom, top, rows: barHeights(spec) });
  return {
    ok: true,
    members: [
      ...leaf.map((member) => ({ member, moves: true })), { member: side, moves: false },
      ...hingeTabs(fence, fence.brief.post, 'man-gate').map((member) => ({ member, moves: false })),
      { member: eyes.still, moves: false }, { member: eyes.moving, moves: true },
    ],
    hardware: [
      { item: 'hinge', size: { kind: 'barrel', diameter: inches(hinge.barrel), length: inches(hinge.length) }, quantity: 2, path: gate.path },
      { item: 'spring', size: null, quantity: 1, path: gate.path },
    ],
  };
}
