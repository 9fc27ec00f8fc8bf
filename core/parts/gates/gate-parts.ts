import { RETURN_GATE } from '../../brief/holding-gate.ts';
import { otherSide, type Brief, type Side } from '../../brief/types.ts';
import { type CrowdGate, type Fence, type Layout, type Opening } from '../../layout/index.ts';
import { pieceKey, type DraftPiece } from '../draft-piece.ts';
import { type FaultList } from '../faults.ts';
import { longestStock } from '../stock.ts';
import { type Hardware } from '../types.ts';
import { backstopMembers } from './backstop.ts';
import { crowdGateMembers } from './crowd-gate.ts';
import { latchedGateMembers } from './latched-gate.ts';
import { type Made } from './made.ts';
import { manGateMembers } from './man-gate.ts';
import { spliced, type Member } from './member.ts';

export interface GateParts {
  readonly pieces: readonly DraftPiece[];
  readonly hardware: readonly Hardware[];
}

/** The pieces and the bought parts of every gate of a layout. What the stock cannot make is told to `faults`. */
export function gateParts(brief: Brief, layout: Layout, faults: FaultList): GateParts {
  const fenceOf = (run: string, side: Side): Fence => layout.fences.find((fence) => fence.run === run && fence.side === side)!;
  const made = [layout.crowdGate, ...layout.openings].map((gate) => {
    const members = membersOf(brief, gate, fenceOf);
    if (!members.ok) faults.gateSkin(faultPath(gate));
    return { gate, made: members };
  });
  const pieces = made.flatMap(({ gate, made: one }) => (one.ok ? cutToStock(brief, one.members).map(({ member, moves }, i) => piece(gate, member, moves, i)) : []));
  return { pieces, hardware: made.flatMap(({ made: one }) => (one.ok ? one.hardware : [])) };
}

const cutToStock = (brief: Brief, members: Extract<Made, { ok: true }>['members']): Extract<Made, { ok: true }>['members'] =>
  members.flatMap(({ member, moves }) => spliced(member, longestStock(brief, member.section)).map((part) => ({ member: part, moves })));

type Gate = CrowdGate | Opening;

function membersOf(brief: Brief, gate: Gate, fenceOf: (run: string, side: Side) => Fence): Made {
  switch (gate.kind) {
    case 'crowd-gate':
      return crowdGateMembers(brief, gate);
    case 'man-gate':
      return manGateMembers(brief, gate, fenceOf(gate.run, gate.side));
    case 'pen-gate':
    case 'alley-gate':
      return latchedGateMembers(brief, gate, fenceOf(gate.run, gate.side));
    case 'backstop':
      return backstopMembers(brief, gate, { left: fenceOf(gate.run, 'left'), right: fenceOf(gate.run, 'right') });
  }
}

function faultPath(gate: Gate): string {
  switch (gate.kind) {
    case 'man-gate':
      return `${gate.path}.width`;
    case 'pen-gate':
      if (gate.path === RETURN_GATE) return 'returnAlley.width';
      // A holding pen's width is another thing than its gate's.
      return `${gate.path}.${gate.sorts || gate.path.startsWith('holdingPens') ? 'gate' : 'width'}`;
    case 'backstop':
      return 'chute.width';
    case 'alley-gate':
    case 'crowd-gate':
      return 'crowdPen.radius';
  }
}

function piece(gate: Gate, member: Member, moves: boolean, index: number): DraftPiece {
  const { side, bay } = where(gate, member);
  const { part, outline, ...figures } = member;
  return {
    key: pieceKey('gate', gate.run, side, bay, index),
    kind: 'gate',
    ...figures,
    bend: null,
    run: gate.run,
    side,
    bay,
    bays: 1,
    place: { kind: 'gate', gate: gate.path, part, moves, outline },
  };
}

/** Parts of a latched gate that stand where its leaf closes. */
const STRIKE: readonly Member['part'][] = ['stop', 'keeper'];

/** Under which fence and bay a gate's piece is listed: a tooth with the outer fence, an upright with the post that it stands on. */
function where(gate: Gate, member: Member): { readonly side: Side; readonly bay: number } {
  switch (gate.kind) {
    case 'crowd-gate':
      return { side: member.part === 'tooth' ? otherSide(gate.side) : gate.side, bay: 1 };
    case 'man-gate':
    case 'pen-gate':
      return { side: gate.side, bay: gate.bay };
    case 'alley-gate': {
      const side = STRIKE.includes(member.part) ? otherSide(gate.side) : gate.side;
      return { side, bay: gate.sides[side].bay };
    }
    case 'backstop': {
      const right = member.outline.kind === 'bar' && member.part === 'upright' && member.outline.a.x > 0;
      const side = right ? 'right' : 'left';
      return { side, bay: gate.sides[side].bay };
    }
  }
}
