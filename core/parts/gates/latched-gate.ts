import { inches, pounds, type Inches } from '../../base/quantity.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSection, gateSheet } from '../../brief/gate-steel.ts';
import { type Brief } from '../../brief/types.ts';
import { alleyPin, type AlleyGate, type Fence, type PenGate } from '../../layout/index.ts';
import { boltHeight, boltMembers, keeperPlate, keeperSleeve } from './latch.ts';
import { leafMembers } from './leaf.ts';
import { plateMember, type Member } from './member.ts';
import { type Made } from './made.ts';

const { hinge, ground, strikeGap, stop, strap, bracket } = GATE_PRACTICE.latchedGate;

/** Between a hinge's bracket and a rail, inches. */
const OFF_RAIL = 0.125;

/**
 * Heights of the lower and the upper hinge of a latched leaf. An alley gate's stand between the rails of its fence, as near to the
 * leaf's ends as those let them, since a bracket reaches through there.
 */
export function latchedHinges({ brief, section }: Fence, kind: (PenGate | AlleyGate)['kind']): readonly [Inches, Inches] {
  const [low, high] = [ground + hinge.fromEnd, brief.height - hinge.fromEnd];
  if (kind === 'pen-gate') return [inches(low), inches(high)];
  const clear = bracket.high / 2 + section.railHeight / 2 + OFF_RAIL;
  const free = (from: number, way: 1 | -1): Inches => {
    const tries = Array.from({ length: Math.max(1, Math.floor((high - low) * 2)) }, (_, i) => from + (way * i) / 4);
    return inches(tries.find((y) => section.rows.every((row) => Math.abs(row - y) >= clear)) ?? from);
  };
  return [free(low, 1), free(high, -1)];
}

/** A pen gate's or alley gate's leaf, its latch, its stop. Along the leaf, x counts from the hinges' pin. `fence`: the one that it hangs in. */
export function latchedGateMembers(brief: Brief, gate: PenGate | AlleyGate, fence: Fence): Made {
  const { frame, bar, barGap } = GATE_PRACTICE.latchedGate;
  const { height, solidFrom, solidTo, sheet } = fence.brief;
  const { reach } = gate.swing;
  const [left, bottom, top] = [inches(hinge.barrel / 2), inches(ground), height];
  const closed = gate.kind === 'pen-gate' && sheet !== null && solidTo > solidFrom;
  const section = gateSection(frame);
  const leaf = leafMembers({
    left, right: reach, bottom, top, frame: section, bar: gateSection(bar), barGap,
    skin: closed ? { sheet, from: solidFrom, to: solidTo } : null,
  }, brief.shop.sheets);
  if (leaf === null) return { ok: false };
  const r = section.across / 2;
  const jamb = reach + strikeGap;
  const straps = reach - left > strap.from ? [strapMember({ x: left + r, y: top - r }, { x: reach - r, y: bottom + r })] : [];
  const still = [
    // Under the latch, which stands on the same side.
    plateMember('stop', gateSheet(stop.plate), jamb - stop.width, jamb, bottom, boltHeight(top) - 3),
    ...(gate.kind === 'pen-gate' ? [keeperPlate(jamb, top)] : [keeperSleeve(jamb, top), ...brackets(fence)]),
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

/** A flat from corner to corner on the back of the bars, in tension where the free end would drop. */
function strapMember(a: At, b: At): Member {
  const sheet = gateSheet(strap.plate);
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return {
    part: 'strap', section: sheet.name, length: inches(length), lengthShort: null, flatHeight: inches(strap.width),
    weight: pounds(sheet.weightPerArea * length * strap.width), ends: [{ kind: 'square' }, { kind: 'square' }],
    outline: { kind: 'bar', a: { x: inches(a.x), y: inches(a.y) }, b: { x: inches(b.x), y: inches(b.y) }, size: inches(strap.width), mitred: false },
  };
}

/** From the post's cattle side to the barrels. */
function brackets(fence: Fence): readonly Member[] {
  const { t, d } = fence.section;
  const face = -alleyPin();
  const back = face - t - (fence.brief.construction === 'lapped' ? d : 0);
  return latchedHinges(fence, 'alley-gate').map((y) => plateMember('bracket', gateSheet(bracket.plate), back, -hinge.barrel / 2, y - bracket.high / 2, y + bracket.high / 2));
}
