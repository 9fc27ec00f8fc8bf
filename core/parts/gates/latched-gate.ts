import { inches, pounds } from '../../base/quantity.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateFlat, gateSection, gateSheet } from '../../brief/gate-steel.ts';
import { type Brief } from '../../brief/types.ts';
import { alleyPin, type AlleyGate, type Fence, type PenGate } from '../../layout/index.ts';
import { hingeHeights, hingeTabs } from './hinge-tabs.ts';
import { boltHeight, boltMembers, keeperPlate, keeperSleeve } from './latch.ts';
import { leafMembers } from './leaf.ts';
import { plateMember, type Member } from './member.ts';
import { type Made } from './made.ts';

const { hinge, ground, strikeGap, stop, strap, bracket } = GATE_PRACTICE.latchedGate;

/** A pen gate's or alley gate's leaf, its latch, its stop. Along the leaf, x counts from the hinges' pin. `fence`: the one that it hangs in. */
export function latchedGateMembers(brief: Brief, gate: PenGate | AlleyGate, fence: Fence): Made {
  const { frame, bar, barGap } = GATE_PRACTICE.latchedGate;
  const { height, solidFrom, solidTo, sheet } = fence.brief;
  const { reach } = gate.swing;
  const [left, bottom, top] = [inches(hinge.barrel / 2), inches(ground), height];
  const closed = gate.kind === 'pen-gate' && sheet !== null && solidTo > solidFrom;
  const section = gateSection(frame);
  const leaf = leafMembers({
    left, right: reach, bottom, top, frame: section, bar: gateSection(bar), barGap, gussets: true,
    skin: closed ? { sheet, from: solidFrom, to: solidTo } : null,
  }, brief.shop.sheets);
  if (leaf === null) return { ok: false };
  const r = section.across / 2;
  const jamb = reach + strikeGap;
  const straps = reach - left > strap.from ? [strapMember({ x: left + r, y: top - r }, { x: reach - r, y: bottom + r })] : [];
  const still = [
    // Under the latch, which stands on the same side.
    plateMember('stop', gateSheet(stop.plate), jamb - stop.width, jamb, bottom, boltHeight(top) - 3),
    ...(gate.kind === 'pen-gate' ? [keeperPlate(jamb, top), ...hingeTabs(fence, gate.hingePost, 'pen-gate')] : [keeperSleeve(jamb, top), ...brackets(fence)]),
  ];
  return {
    ok: true,
    members: [
      ...[...leaf, ...straps, ...boltMembers(reach, top)].map((member) => ({ member, moves: true })),
      ...still.map((member) => ({ member, moves: false })),
    ],
    hardware: [{ item: 'hinge', size: { kind: 'barrel', diameter: inches(hinge.barrel), length: inches(hinge.length) }, quantity: 2, path: gate.path }],
  };
}

interface At {
  readonly x: number;
  readonly y: number;
}

/** A flat bar from corner to corner on the back of the bars, in tension where the free end would drop. */
function strapMember(a: At, b: At): Member {
  const { name, width, weightPerInch } = gateFlat(strap.flat);
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return {
    part: 'strap', section: name, length: inches(length), lengthShort: null, flatHeight: null, weight: pounds(weightPerInch * length), ends: [{ kind: 'square' }, { kind: 'square' }],
    outline: { kind: 'bar', a: { x: inches(a.x), y: inches(a.y) }, b: { x: inches(b.x), y: inches(b.y) }, size: width, mitred: false },
  };
}

/** From the post's cattle side to the barrels. */
function brackets(fence: Fence): readonly Member[] {
  const { t, d } = fence.section;
  const face = -alleyPin();
  const back = face - t - (fence.brief.construction === 'lapped' ? d : 0);
  return hingeHeights(fence, 'alley-gate').map((y) => plateMember('bracket', gateSheet(bracket.plate), back, -hinge.barrel / 2, y - bracket.high / 2, y + bracket.high / 2));
}
